import { useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { readCodeOfPicture } from '../../device/code-reader.ts'
import { hashOfSecret } from '../../device/secret-hash.ts'
import { takeOver, textOfCodes } from '../../state/actions.ts'
import { type Collecting, collect, missingOf, nothingCollected } from '../../sync/hand-over/collecting.ts'
import { say } from '../../words/say.ts'
import { tabPath } from '../paths.ts'

/** Collects codes from camera and pictures, or takes a file, until the outing is here. */
export function useTakeOver(label: string) {
  const [said, setSaid] = useState('')
  const so = useRef<Collecting>(nothingCollected)
  const [, go] = useLocation()

  const take = async (text: string): Promise<void> => {
    const taken = await takeOver(text, label)
    if (taken.ok) go(tabPath(taken.value, 'hole'))
    else setSaid(say(`take-over-${taken.error}`))
  }

  const takeCodes = async (data: string): Promise<void> => {
    so.current = nothingCollected
    const text = await textOfCodes(data)
    if (text === null) setSaid(say('take-over-damaged'))
    else await take(text)
  }

  const keep = (kind: 'kept' | 'another', kept: Collecting): void => {
    so.current = kept
    const fill = { n: kept.parts.size, of: kept.of, missing: missingOf(kept).join(', ') }
    setSaid(say(kind === 'another' ? 'take-over-another' : 'take-over-some', fill))
  }

  /** One code; a camera sees codes of other things too and says nothing of them. */
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

  /** Pictures of codes in any order, or the file. */
  const pick = async (files: readonly File[]): Promise<void> => {
    for (const file of files) {
      if (!file.type.startsWith('image/')) return take(await file.text())
      const code = await readCodeOfPicture(file)
      if (code === null || !(await read(code))) setSaid(say('take-over-none', { name: file.name }))
    }
  }

  return { said, read, pick }
}
