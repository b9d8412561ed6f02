/** Hands a text to the reader as a file. */
export function saveFile(name: string, text: string): void {
  const link = document.createElement('a')
  const address = URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }))
  link.href = address
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  // The browser still reads from the address after the click.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
