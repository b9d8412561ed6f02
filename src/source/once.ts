/** What is costly and asked for by several is made once, and not before. */
export function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** A function that gives the answer of the first time for each argument. */
export function remembered<A, T>(answer: (argument: A) => T): (argument: A) => T {
  return rememberedIn(new Map(), answer)
}

/** The same for objects; what nothing else holds any more is forgotten. */
export function rememberedOf<A extends object, T>(answer: (argument: A) => T): (argument: A) => T {
  return rememberedIn(new WeakMap(), answer)
}

interface Answers<A, T> {
  get(argument: A): { value: T } | undefined
  set(argument: A, answer: { value: T }): unknown
}

function rememberedIn<A, T>(known: Answers<A, T>, answer: (argument: A) => T): (argument: A) => T {
  return (argument) => {
    let found = known.get(argument)
    if (!found) {
      found = { value: answer(argument) }
      known.set(argument, found)
    }
    return found.value
  }
}

/** The same for two objects: answered anew only when one of them is another. */
export function rememberedOfTwo<A extends object, B extends object, T>(answer: (one: A, other: B) => T): (one: A, other: B) => T {
  const known = rememberedOf((one: A) => rememberedOf((other: B) => answer(one, other)))
  return (one, other) => known(one)(other)
}
