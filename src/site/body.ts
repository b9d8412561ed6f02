import { Fragment, jsx, jsxs } from 'astro/jsx-runtime'
import type { Root as HastRoot } from 'hast'
import { type Components, toJsxRuntime } from 'hast-util-to-jsx-runtime'
import type { Root } from 'mdast'
import { toHast } from 'mdast-util-to-hast'
import { giveMarks } from './callout-marks.ts'

/**
 * A component that shows the body of a page: the tree that the check has read, with our elements in place
 * of its MDX elements. No code of a page is ever compiled or run.
 *
 * The three symbols are what Astro's own MDX integration puts on a compiled page, so that its renderer takes
 * it; Astro is pinned, and tests/site/body.test.ts guards them.
 */
export function contentOf(body: Root, elements: Readonly<Record<string, unknown>>): () => unknown {
  const hast = toHast(body, { passThrough: ['mdxJsxFlowElement', 'mdxJsxTextElement'] }) as HastRoot
  giveMarks(hast)
  const content = () =>
    toJsxRuntime(hast, {
      Fragment,
      jsx,
      jsxs,
      // A title stands over every page already; a heading of the first rank is one of the second.
      components: { ...elements, h1: 'h2' } as Components,
      passKeys: false,
      createEvaluater: () => ({
        evaluateExpression(expression) {
          if (expression.type === 'Identifier' && elements[expression.name]) return elements[expression.name]
          throw new Error('a page holds an expression that the check should have refused')
        },
        evaluateProgram() {
          throw new Error('a page holds code that the check should have refused')
        },
      }),
      elementAttributeNameCase: 'html',
      stylePropertyNameCase: 'css',
    })
  return Object.assign(content, {
    [Symbol.for('mdx-component')]: true,
    [Symbol.for('astro.needsHeadRendering')]: false,
    [Symbol.for('astro:renderer')]: 'astro:jsx',
  })
}
