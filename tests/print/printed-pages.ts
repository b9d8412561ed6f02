/** A page as the site writes it, as far as paper needs it. */
export function sitePage(title: string, main: string, kind = 'procedure'): string {
  return `<!DOCTYPE html><html lang="en"><head><title>${title} · RCW 400 0400-017</title></head><body class="kind-${kind}"><header>plate</header><main id="main">${main}</main><nav class="rail"><a href="alarms.html">It stopped</a></nav></body></html>`
}
