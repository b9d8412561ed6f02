// What scripts ask for and Chromium 80, the oldest that they are lowered for, does not have. Imported before everything else.

// From version 93 on; @noble/hashes asks for it.
fillIn(Object, 'hasOwn', (object: object, name: PropertyKey) => Object.getOwnPropertyDescriptor(object, name) !== undefined)

// From version 86 on.
if (typeof Element !== 'undefined')
  fillIn(Element.prototype, 'replaceChildren', function (this: Element, ...nodes: readonly (Node | string)[]) {
    this.textContent = ''
    this.append(...nodes)
  })

function fillIn(owner: object, name: string, value: unknown): void {
  if (Reflect.get(owner, name) === undefined) Object.defineProperty(owner, name, { value, configurable: true, writable: true })
}
