import { parentPort, workerData } from 'node:worker_threads'
import { makeInput } from './inputs.ts'
import { readSeeds } from './seeds.ts'
import { inputTrier } from './try-input.ts'

/** Tries the inputs that it is told of, one after the other. */
const { seed } = workerData as { seed: number }
const seeds = readSeeds()
const tryInput = inputTrier()
parentPort?.on('message', async (index: number) => parentPort?.postMessage(await tryInput(makeInput(index, seed, seeds))))
