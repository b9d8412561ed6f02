const entries = 'entries'

/** What IndexedDB answered instead: the store is blocked or missing, it is full, or something else went wrong. */
export interface DatabaseFault {
  readonly kind: 'blocked' | 'full' | 'broken'
  readonly message: string
}

/** Opens the database of a machine; its name begins with the machine, as all files of a panel share one store. */
export function openDatabase(machineId: string): Promise<IDBDatabase | { fault: DatabaseFault }> {
  return new Promise((resolve) => {
    const blocked = (error: unknown) => resolve({ fault: { kind: 'blocked', message: messageOf(error) } })
    try {
      const request = indexedDB.open(`${machineId}.training-records`, 1)
      request.onupgradeneeded = () => request.result.createObjectStore(entries, { keyPath: 'seq' })
      request.onsuccess = () => {
        const database = request.result
        database.onversionchange = () => database.close()
        resolve(database)
      }
      request.onerror = () => blocked(request.error)
      request.onblocked = () => blocked('another tab keeps it open')
    } catch (error) {
      blocked(error)
    }
  })
}

/**
 * Reads all entries and writes what `plan` makes of them, in one transaction: no other tab can write in between. Resolves
 * when the browser says that all is written, or with what went wrong; then nothing is written.
 */
export function inOneStep<T>(
  database: IDBDatabase,
  mode: 'readonly' | 'readwrite',
  plan: (kept: readonly unknown[]) => { add?: readonly object[]; clear?: boolean; result: T },
): Promise<{ result: T } | { fault: DatabaseFault }> {
  return new Promise((resolve) => {
    const fail = (error: unknown) => resolve({ fault: { kind: isFull(error) ? 'full' : 'broken', message: messageOf(error) } })
    try {
      // Written through to the disk: a panel may lose its power at any time. Older browsers take no notice.
      const transaction = database.transaction(entries, mode, { durability: 'strict' })
      const store = transaction.objectStore(entries)
      let planned: { result: T } | undefined
      const all = store.getAll()
      all.onsuccess = () => {
        try {
          const { add = [], clear = false, result } = plan(all.result)
          if (clear) store.clear()
          for (const entry of add) store.add(entry)
          planned = { result }
        } catch (error) {
          fail(error)
          transaction.abort()
        }
      }
      transaction.oncomplete = () => (planned ? resolve({ result: planned.result }) : fail('nothing was read'))
      transaction.onabort = () => fail(transaction.error)
    } catch (error) {
      fail(error)
    }
  })
}

const isFull = (error: unknown) => error instanceof DOMException && error.name === 'QuotaExceededError'
const messageOf = (error: unknown) => (error instanceof Error ? `${error.name}: ${error.message}` : String(error ?? ''))
