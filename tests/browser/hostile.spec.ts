import { createHash, randomBytes } from 'node:crypto'
import { expect, type Page, test } from '@playwright/test'
import { io, type Socket } from 'socket.io-client'
import * as z from 'zod/mini'
import { type Op, textOfOp } from '#core/log/op.ts'
import { factKinds } from '#core/outing/keys.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import { type UpEvent, upSchemas } from '#server/live/dispatch.ts'
import { factSchemas } from '#shared/facts.ts'
import { limits } from '#shared/limits.ts'
import { isTooDeep, opSchema } from '#shared/op.ts'
import { protocolVersion } from '#shared/protocol.ts'
import { openStoreContent } from '#tests/kit/store-content.ts'
import { factExamples, messageExamples } from '#tests/server/hostile/examples.ts'
import { type JsonSchema, mutantsOf } from '#tests/server/hostile/mutants.ts'
import {
  fourBallAndPoints,
  joinBy,
  openTab,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

/** A program that followed an invite and now says whatever it likes. */
interface Stranger {
  readonly log: LogId
  readonly device: DeviceId
  ask(event: string, message: unknown): Promise<unknown>
  close(): void
}

async function joinAsStranger(link: string): Promise<Stranger> {
  const { origin, hash } = new URL(link)
  const [, , log = '', invite = '', secret = ''] = hash.split('/')
  const [device, key] = ['stranger1' as DeviceId, randomBytes(16).toString('base64url')]
  const auth = { protocol: protocolVersion, log, device, key, invite: { id: invite, secret } }
  const socket: Socket = io(origin, { transports: ['websocket'], forceNew: true, auth })
  await new Promise((resolve, reject) => socket.once('connect', () => resolve(null)).once('connect_error', reject))
  const stranger: Stranger = {
    log: log as LogId,
    device,
    ask: (event, message) => askPatiently(socket, event, message),
    close: () => socket.close(),
  }
  const grant = { hash: createHash('sha256').update(key).digest('hex'), role: 'desk', group: null, label: 'Stranger' }
  const joined = opOf(stranger, 1, `key/${device}`, { ...grant, invite })
  expect(await stranger.ask('push', { ops: [textOfOp(joined)] })).toMatchObject({ verdicts: [{ kind: 'stored' }] })
  return stranger
}

/** Asks again where the server only says that this was too much for one second. */
async function askPatiently(socket: Socket, event: string, message: unknown): Promise<unknown> {
  for (;;) {
    const answer = await socket.timeout(10_000).emitWithAck(event, message)
    if (!JSON.stringify(answer).includes('"busy"')) return answer
    await new Promise(resolve => setTimeout(resolve, 100))
  }
}

const opOf = ({ log, device }: Pick<Stranger, 'log' | 'device'>, n: number, key: string, value: Json): Op => ({
  log,
  scope: null,
  device,
  n,
  tick: n,
  at: 1,
  act: 'said',
  facts: [{ key, value, replaces: [] }],
})

const schemaOf = (schema: z.ZodMiniType): JsonSchema => z.toJSONSchema(schema, { io: 'input' }) as JsonSchema

/** One wrong message, and the field that its answer must name. */
interface Wrong {
  readonly name: string
  readonly event: string
  readonly message: Json
  readonly names: string
}

function wrongMessages(): Wrong[] {
  return Object.entries(messageExamples).flatMap(([event, example]) =>
    mutantsOf(schemaOf(upSchemas[event as UpEvent]), example).map(({ name, value, path }) => ({
      name: `${event} ${name}`,
      event,
      message: value,
      names: path,
    })),
  )
}

/** Wrong ops and wrong values of every kind; what is too long or too deep to be looked into names no field. */
function wrongOps(stranger: Stranger): Wrong[] {
  const pushOf = (name: string, op: Json, names: string): Wrong[] => {
    const text = canonicalJson(op)
    const isUnread = text.length > limits.opLength || isTooDeep(text) || text.includes('__proto__')
    return [{ name, event: 'push', message: { ops: [text] }, names: isUnread ? '' : names }]
  }
  const valid = opOf(stranger, 99, 'title', 'Quillmoor') as unknown as Json
  const ops = mutantsOf(schemaOf(opSchema), valid).flatMap(({ name, value, path }) => pushOf(name, value, path))
  const facts = factKinds.flatMap(kind => {
    const { key, values } = factExamples[kind]
    const [value] = values
    if (value === undefined) throw new Error(`no valid example of ${kind}`)
    return mutantsOf(schemaOf(factSchemas[kind]), value).flatMap(mutant =>
      mutant.value === null
        ? []
        : pushOf(`${kind} ${mutant.name}`, opOf(stranger, 99, key, mutant.value) as unknown as Json, mutant.path),
    )
  })
  return [...ops, ...facts]
}

/** Everything that a page shows, and everything that it keeps. */
function contentOfPage(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const kept: unknown[] = []
    for (const { name } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>(resolve => {
        const opening = indexedDB.open(name ?? '')
        opening.onsuccess = () => resolve(opening.result)
      })
      for (const store of database.objectStoreNames) {
        const all = database.transaction(store).objectStore(store).getAll()
        await new Promise(resolve => {
          all.onsuccess = resolve
        })
        kept.push([store, all.result])
      }
      database.close()
    }
    return JSON.stringify([document.body.textContent, kept])
  })
}

/** What is read twice the same: nothing is on its way any more. */
async function whenStill(read: () => Promise<string[]>): Promise<string[]> {
  let last = await read()
  await expect(async () => {
    const now = await read()
    const isStill = now.join() === last.join()
    last = now
    expect(isStill).toBe(true)
  }).toPass()
  return last
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex')

const messagesInLook = 8

test('no wrong message changes the store or a page, and each answer names the field', async ({ browser }) => {
  const server = await startServer()
  const phones = [await openPhone(browser, 'Alder'), await openPhone(browser, 'Birch')] as const
  const [alder, birch] = phones
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await tapScore(alder.page, 'Alder', 5)
  const link = await readInviteLink(alder.page)
  await joinBy(birch.page, link, 'Birch')
  const stranger = await joinAsStranger(link)
  for (const { page } of phones) {
    await openTab(page, 'Board')
    await whenOnServer(page)
  }
  await openTab(alder.page, 'Share')
  await expect(alder.page.getByText('Stranger', { exact: true })).toBeVisible()
  await openTab(alder.page, 'Card')
  await expect(alder.page.getByRole('link', { name: 'Download the outing file, plain' })).toBeVisible()
  await expect(birch.page.getByText('through 1')).toBeVisible()

  const store = await openStoreContent(server.dataDir)
  const everything = async () => [store.hash(), ...(await Promise.all(phones.map(({ page }) => contentOfPage(page))))]
  const before = (await whenStill(everything)).map(hashOf)
  const wrongs = [...wrongMessages(), ...wrongOps(stranger)]
  expect(wrongs.length).toBeGreaterThan(500)
  const [storeBefore] = before
  for (const [place, { name, event, message, names }] of wrongs.entries()) {
    const answer = JSON.stringify(await stranger.ask(event, message))
    expect([name, answer]).toEqual([name, expect.stringMatching(/"kind":"(fault|refused)"/)])
    expect([name, answer]).toEqual([name, expect.stringContaining(names)])
    expect([name, hashOf(store.hash())]).toEqual([name, storeBefore])
    // What a page took in stays in it: the pages are read after every few.
    const isLook = place % messagesInLook === 0 || place === wrongs.length - 1
    if (isLook) expect([name, ...(await everything()).map(hashOf)]).toEqual([name, ...before])
  }
  stranger.close()
  store.close()
  noComplaints(phones)
  await server.stop()
})
