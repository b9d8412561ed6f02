// @noble/hashes asks for Object.hasOwn, which Chromium has from version 93 on. Imported before everything else.
if (Reflect.get(Object, 'hasOwn') === undefined) {
  const value = (object: object, name: PropertyKey) => Object.getOwnPropertyDescriptor(object, name) !== undefined
  Object.defineProperty(Object, 'hasOwn', { value, configurable: true, writable: true })
}

export {}
