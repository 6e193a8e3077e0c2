import { useRef, useState } from 'react'
import { readCodeOfPicture } from '../../device/code-reader.ts'
import { hashOfSecret } from '../../device/secret-hash.ts'
import { textOfCodes } from '../../state/handing-over.ts'
import { type Collecting, collect, missingOf, nothingCollected } from '../../sync/hand-over/collecting.ts'
import { say } from '../../words/say-any.ts'

export interface Codes {
  readonly said: string
  /** One code; false where it is none of ours. */
  readonly read: (code: string) => Promise<boolean>
  /** Pictures of codes in any order, or the file. */
  readonly pick: (files: readonly File[]) => Promise<void>
}

/** Collects codes from camera and pictures, or takes a file, until a text is whole; `take` answers what is to be said of it. */
export function useCodes(take: (text: string, name: string) => Promise<string | null>): Codes {
  const [said, setSaid] = useState('')
  const so = useRef<Collecting>(nothingCollected)

  const takeText = async (text: string, name: string): Promise<void> => setSaid((await take(text, name)) ?? '')

  const takeCodes = async (data: string): Promise<void> => {
    so.current = nothingCollected
    const text = await textOfCodes(data)
    if (text === null) setSaid(say('take-over-damaged'))
    else await takeText(text, '')
  }

  const keep = (kind: 'kept' | 'another', kept: Collecting): void => {
    so.current = kept
    const fill = { n: kept.parts.size, of: kept.of, missing: missingOf(kept).join(', ') }
    setSaid(say(kind === 'another' ? 'take-over-another' : 'take-over-some', fill))
  }

  // A camera sees codes of other things too and says nothing of them.
  const read = async (code: string): Promise<boolean> => {
    const collected = collect(so.current, code, hashOfSecret)
    if (collected.kind === 'not ours') return false
    if (collected.kind === 'whole') await takeCodes(collected.data)
    else if (collected.kind === 'damaged') {
      so.current = nothingCollected
      setSaid(say('take-over-damaged'))
    } else keep(collected.kind, collected.so)
    return true
  }

  const pick = async (files: readonly File[]): Promise<void> => {
    for (const file of files) {
      if (!file.type.startsWith('image/')) return takeText(await file.text(), file.name)
      const code = await readCodeOfPicture(file)
      if (code === null || !(await read(code))) setSaid(say('take-over-none', { name: file.name }))
    }
  }

  return { said, read, pick }
}
