/** The click of a touch comes a moment after the finger has left. */
const clickMs = 50

/**
 * Gives a way to wait until no finger is on the place, and its touch was taken: what is renewed under a finger moves
 * away from it, and another row is opened than was meant.
 */
export function whenUntouched(place: HTMLElement): () => Promise<void> {
  let untouched = Promise.resolve()
  place.addEventListener('pointerdown', ({ pointerId: finger }) => {
    untouched = new Promise((take) => {
      const end = ({ pointerId }: PointerEvent) => {
        if (pointerId !== finger) return
        removeEventListener('pointerup', end)
        removeEventListener('pointercancel', end)
        setTimeout(take, clickMs)
      }
      addEventListener('pointerup', end)
      addEventListener('pointercancel', end)
    })
  })
  return () => untouched
}
