import { packText } from '../device/packing.ts'
import { framesOf } from '../sync/hand-over/frames.ts'
import { inventions } from './inventions.ts'

/** A text as codes for another phone, to be read in any order. */
export const codesOfText = async (text: string): Promise<readonly string[]> =>
  framesOf(await packText(text), inventions.hash)
