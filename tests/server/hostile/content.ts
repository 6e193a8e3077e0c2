import { onTestFinished } from 'vitest'
import { openStoreContent } from '#tests/kit/store-content.ts'

/** Gives a hash of everything that a data folder holds, until the test is over. */
export async function openContent(folder: string): Promise<() => string> {
  const content = await openStoreContent(folder)
  onTestFinished(() => content.close())
  return () => content.hash()
}
