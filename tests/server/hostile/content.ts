import { onTestFinished } from 'vitest'
import { openStoreContent } from '#tests/kit/store-content.ts'

/** Gives a hash of everything that a data folder holds, but for the tables named, until the test is over. */
export async function openContent(folder: string): Promise<(...but: readonly string[]) => string> {
  const content = await openStoreContent(folder)
  onTestFinished(() => content.close())
  return (...but) => content.hash(...but)
}
