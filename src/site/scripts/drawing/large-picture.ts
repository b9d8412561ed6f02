/** Width up to which the small picture of a sheet is sharp, in px of the screen. */
const smallWidthPx = 1200

/** Takes the width at which a sheet is shown, and brings its large picture when that and paper need it. It is decoded first, so that the sheet never goes blank. */
export function largePicture(drawing: ParentNode): (widthPx: number) => void {
  const image = drawing.querySelector<SVGImageElement>('image[data-large]')
  const large = image?.dataset.large
  if (!image || large === undefined) return () => {}
  let asked = false
  const bring = () => {
    if (asked) return
    asked = true
    const picture = new Image()
    picture.src = large
    const show = () => image.setAttribute('href', large)
    picture.decode().then(show, show)
  }
  addEventListener('beforeprint', () => {
    asked = true
    image.setAttribute('href', large)
  })
  return (widthPx) => {
    if (widthPx * devicePixelRatio > smallWidthPx) bring()
  }
}
