import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { SearchLabels } from '../../src/site/scripts/search/labels.ts'

export const labels: Record<'en' | 'es', SearchLabels> = {
  en: {
    kinds: {
      tag: 'Devices',
      alarm: 'Alarms',
      part: 'Parts',
      drawing: 'Drawings',
      lockout: 'Lockouts',
      hazard: 'Hazards',
      job: 'Jobs',
      assembly: 'Assemblies',
      lesson: 'Lessons',
      page: 'Pages',
    },
    results: '{count} found',
    oneResult: '1 found',
    nothing: 'Nothing found for “{typed}”.',
    instead: 'Searched for “{used}” instead of “{typed}”.',
    also: 'Searched for “{used}”: that is what “{typed}” is called here.',
    unknown: 'No page has “{typed}”.',
    near: 'Nothing has exactly this name. Near to it:',
    failed: 'The search index cannot be loaded. The lists still work:',
    namesOnly: 'Only names were searched: this browser cannot search the text.',
    more: 'Show more',
    allOfKind: 'All {count}',
    keys: 'Keys',
    closeKeys: 'Close',
    space: 'Space',
    erase: 'Erase',
    clear: 'Clear',
    find: 'Find',
    accents: 'Á É Í',
  },
  es: {
    kinds: {
      tag: 'Aparatos',
      alarm: 'Alarmas',
      part: 'Piezas',
      drawing: 'Planos',
      lockout: 'Bloqueos',
      hazard: 'Peligros',
      job: 'Trabajos',
      assembly: 'Conjuntos',
      lesson: 'Lecciones',
      page: 'Páginas',
    },
    results: '{count} resultados.',
    oneResult: '1 resultado.',
    nothing: 'No hay nada para «{typed}».',
    instead: 'Se ha buscado «{used}» en lugar de «{typed}».',
    also: 'Se ha buscado «{used}»: así se llama aquí «{typed}».',
    unknown: 'Ninguna página tiene «{typed}».',
    near: 'Nada se llama exactamente así. Parecido:',
    failed: 'No se pudo cargar el índice de búsqueda. Las listas siguen funcionando:',
    namesOnly: 'Solo se buscaron nombres: este navegador no puede buscar en el texto.',
    more: 'Mostrar más',
    allOfKind: 'Los {count}',
    keys: 'Teclas',
    closeKeys: 'Cerrar',
    space: 'Espacio',
    erase: 'Borrar',
    clear: 'Vaciar',
    find: 'Buscar',
    accents: 'Á É Í',
  },
}

/** Writes a start page and a search page in each language, with the scripts and styles that the site gives them. */
export async function writeSearchPages(siteDir: string): Promise<void> {
  const source = (path: string) => fileURLToPath(new URL(`../../src/site/${path}`, import.meta.url))
  const common = { bundle: true, minify: true, target: 'chrome80', charset: 'utf8', logLevel: 'silent' } as const
  await build({ ...common, format: 'iife', entryPoints: [source('scripts/search/main.ts')], outfile: join(siteDir, 'assets/search-ui.js') })
  const contents = `@import './site.css';\n@import './search.css';`
  const stdin = { contents, resolveDir: source('styles'), loader: 'css' } as const
  const styles = await build({ ...common, write: false, stdin, external: ['*.woff2'] })
  // The system's fonts will do here.
  write(join(siteDir, 'assets/site.css'), (styles.outputFiles[0]?.text ?? '').replace(/@font-face\{[^}]*\}/g, ''))
  for (const language of ['en', 'es'] as const) {
    const below = language === 'en' ? '' : '../'
    const head = `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Washer</title><link rel="icon" href="data:,"><link rel="stylesheet" href="${below}assets/site.css">`
    const ui = `<script defer src="${below}assets/search-ui.js"></script>`
    const form = `<form data-search class="search-form" role="search" action="search.html"><input type="search" name="q" aria-label="Search" autocomplete="off"><button>Find</button></form><script type="application/json" data-search-labels>${JSON.stringify(labels[language])}</script>`
    const results =
      '<p role="status" class="search-status" data-search-status></p><div data-search-results></div><div data-search-fallback><a href="list.html">The list</a></div>'
    write(
      join(siteDir, language === 'en' ? '' : language, 'index.html'),
      `${head}${ui}</head><body><main><h1>Start</h1>${form}<p style="height: 900px">Plan</p></main></body></html>`,
    )
    write(
      join(siteDir, language === 'en' ? '' : language, 'search.html'),
      `${head}<script defer src="${below}search/core.js"></script>${ui}</head><body><main><h1 class="hidden">Search</h1>${form}${results}</main></body></html>`,
    )
  }
}

function write(file: string, html: string): void {
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, html)
}
