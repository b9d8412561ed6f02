import { load } from './store.ts'

// Runs before the first paint: the theme that was chosen on this panel.
const theme = load('fettle.theme')
if (theme === 'dark' || theme === 'light') document.documentElement.dataset.theme = theme
