import { createApp } from 'astro/app/entrypoint'
import type { SitePage } from './site-map.ts'

const app = createApp({ streaming: false })
// A page that fails stops the build with what it failed of, and is no page about an error.
app.renderError = async (_request, { error, status }) => {
  throw error ?? new Error(`a page was answered with ${status}`)
}

/** Makes the HTML of a page of what was handed over last. Rejects with what a view throws. */
export async function renderPage(page: SitePage): Promise<string> {
  const response = await app.render(new Request('http://localhost/'), { locals: { page } })
  return await response.text()
}
