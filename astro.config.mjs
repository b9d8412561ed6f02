// For editors and `astro check` alone: `fettle build` gives Astro its settings itself (src/site/compile-pages.ts).
import { defineConfig } from 'astro/config'

export default defineConfig({ srcDir: './src/site', cacheDir: './node_modules/.cache/astro', devToolbar: { enabled: false } })
