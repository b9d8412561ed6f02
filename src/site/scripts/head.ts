// Runs before the first paint: the theme that was chosen on this panel.
try {
  const theme = localStorage.getItem('fettle.theme')
  if (theme === 'dark' || theme === 'light') document.documentElement.dataset.theme = theme
} catch {
  // Storage is off: the panel's own setting decides.
}
