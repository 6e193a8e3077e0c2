import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import type { LogId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import { err, type Fault, ok, type Result } from '#core/values/result.ts'
import { isCardText } from '#shared/card-file.ts'
import { parseOutingFile } from '#shared/outing-file.ts'
import { heldOfText } from '../sync/brought.ts'
import { noMark } from '../sync/held-op.ts'
import { takeCard } from './card-taking.ts'
import { currentEngine, engineOf, logStore, showLog } from './open-outing.ts'
import { outingStore } from './outing-store.ts'
import { freshRecord, startOuting } from './starting.ts'

export interface TextFile {
  readonly name: string
  readonly text: string
}

/** The open outing as a file: every op that counts, or plainly what they say. Null while the plain one lacks a hole of the course. */
export function exportFile(form: 'whole' | 'plain'): TextFile | null {
  const { outing } = outingStore.getState()
  const file = form === 'whole' ? wholeFile() : outing && plainOf(outing)
  if (!file) return null
  return { name: fileName(form), text: `${JSON.stringify(file, null, form === 'plain' ? 2 : undefined)}\n` }
}

function wholeFile(): object {
  const { log, history } = outingStore.getState()
  return { sixThrees: 'outing', version: 1, form: 'whole', log, ops: history.map(({ op }) => op) }
}

function fileName(form: 'whole' | 'plain'): string {
  const { outing } = outingStore.getState()
  const words = [outing?.title ?? outing?.courseName ?? 'outing', outing?.day ?? '']
  const slug = words
    .join(' ')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
  return `${slug.replaceAll(/^-+|-+$/g, '') || 'outing'}${form === 'whole' ? '.whole' : ''}.json`
}

/**
 * Opens a file. A plain one starts a new outing. A whole one is the outing it came from: what this phone lacks of it is
 * put in; where the phone was let in by nobody it is there to be read until an invite is shown.
 */
export async function importFile(text: string, label: string): Promise<Result<LogId, readonly Fault[]>> {
  if (isCardText(text)) {
    const taken = await takeCard(text, label)
    return taken.ok ? taken : err([{ path: '', code: taken.error }])
  }
  const parsed = parseOutingFile(text)
  if (!parsed.ok) return err(parsed.error)
  const file = parsed.value
  if (file.form === 'plain') return ok(await startOuting(factsOfPlain(file), label))
  await openWhole(
    file.log,
    file.ops.map(op => canonicalJson(op as unknown as Json)),
    label,
  )
  return ok(file.log)
}

async function openWhole(log: LogId, texts: readonly string[], label: string): Promise<void> {
  if (!engineOf(log)) {
    const stored = await logStore.load(log).catch(() => null)
    if (!stored) {
      const ops = texts.flatMap((text, index) => heldOfText(log, text, index + 1, noMark) ?? [])
      const record = { ...freshRecord(log, label), nextPlace: ops.length + 1 }
      await logStore.save(record, ops).catch(() => undefined)
      showLog({ record, ops }, false)
      return
    }
    showLog(stored, true)
  }
  await currentEngine().bring(texts)
}
