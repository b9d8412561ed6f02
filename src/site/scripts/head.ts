import { applyDisplay } from './display/apply-display.ts'

applyDisplay()

// What scripts will show has its room from the start, so that nothing moves when they do.
document.documentElement.classList.add('scripts')

// An engine without gaps between the parts of a row has them as margins; any other does not load them.
const script = document.currentScript
if (script instanceof HTMLScriptElement && !CSS.supports('appearance', 'none')) {
  const link = document.createElement('link')
  link.rel = 'stylesheet'
  link.href = script.src.replace('head.js', 'older.css')
  document.head.append(link)
}
