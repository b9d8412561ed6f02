import type { DrawingTexts } from '../../drawing-texts.ts'

/** Loads the texts of the drawing when they are first asked for. Undefined where they cannot be loaded. */
export function loadTexts(source: HTMLScriptElement): () => Promise<readonly DrawingTexts[] | undefined> {
  let loading: Promise<readonly DrawingTexts[] | undefined> | undefined
  return () => {
    loading ??= new Promise((done) => {
      const script = document.createElement('script')
      script.src = source.src
      script.onload = () => done(window.FettleDrawing)
      script.onerror = () => done(undefined)
      document.head.append(script)
    })
    return loading
  }
}
