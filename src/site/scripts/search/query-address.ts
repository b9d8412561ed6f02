/** What to search for at the beginning, from `?q=` or `#q=` of the address. */
export function queryOfAddress({ search, hash }: Location): string {
  return new URLSearchParams(search).get('q') ?? new URLSearchParams(hash.slice(1)).get('q') ?? ''
}

/** Keeps the query in the address, so that the way back from a page leads to the same results. */
export function keepQuery(query: string): void {
  const address = new URL(location.href)
  address.hash = ''
  if (query === '') address.searchParams.delete('q')
  else address.searchParams.set('q', query)
  history.replaceState(null, '', address.href)
}
