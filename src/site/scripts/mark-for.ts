interface At {
  file: string
  line: number
}

/** The mark of the block in which a line stands: the last one of its file at or before the line; for a line above all blocks the first. */
export function markFor<M extends At>({ file, line }: At, marks: readonly M[]): M | undefined {
  const own = marks.filter((mark) => mark.file === file)
  const before = own.filter((mark) => mark.line <= line)
  return before.reduce<M | undefined>((best, mark) => (best && best.line >= mark.line ? best : mark), undefined) ?? own[0]
}
