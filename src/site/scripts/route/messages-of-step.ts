/**
 * The safety messages that hold for a step, in the order of the page: those that stand before it under a heading that it
 * stands under too, those before the first heading, and those in it.
 */
export function messagesOfStep(step: Element): HTMLElement[] {
  const marks = step.closest('main')?.querySelectorAll<HTMLElement>('h2, h3, .safety') ?? []
  const sections: { rank: number; messages: HTMLElement[] }[] = [{ rank: 0, messages: [] }]
  for (const mark of marks) {
    const isIn = step.contains(mark)
    if (!isIn && !(mark.compareDocumentPosition(step) & Node.DOCUMENT_POSITION_FOLLOWING)) break
    const rank = rankOf(mark)
    if (rank !== undefined) {
      while ((sections[sections.length - 1]?.rank ?? 0) >= rank) sections.pop()
      sections.push({ rank, messages: [] })
    } else if (isMessage(mark) && (isIn || !mark.closest('.route-step'))) sections[sections.length - 1]?.messages.push(mark)
  }
  return sections.flatMap(({ messages }) => messages)
}

/** One that sends the reader to read on has no signal word. */
const isMessage = (mark: Element) => mark.querySelector('.safety-word') !== null

/** A heading of the text; those of the boxes beside it divide nothing. */
const rankOf = (mark: Element) =>
  /^H[23]$/.test(mark.tagName) && mark.closest('.prose, .set-up') && !mark.closest('.claim') ? Number(mark.tagName[1]) : undefined
