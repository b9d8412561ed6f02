/// <reference types="astro/client" />

// The compiler alone cannot see into `.astro` files; `astro check` types them.
declare module '*.astro' {
  const component: (props: Record<string, unknown>) => unknown
  export default component
}
