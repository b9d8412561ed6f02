import { parentPort, workerData } from 'node:worker_threads'
import { makeInput, readSeeds } from './inputs.ts'
import { tryInput } from './try-input.ts'

/** Tries the inputs that it is told of, one after the other. */
const { seed } = workerData as { seed: number }
const seeds = readSeeds()
parentPort?.on('message', (index: number) => parentPort?.postMessage(tryInput(makeInput(index, seed, seeds))))
