/**
 * The file that Astro writes for a page. It takes the last `index` of a route as the folder itself and then
 * looks for `es.html` where we want `es/index.html`, so such a page is written under another name first.
 */
export function routeOf(path: string): string {
  return path.replace(/\/index\.html$/, '/index~.html')
}
