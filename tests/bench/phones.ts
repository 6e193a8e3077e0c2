import { createHash, randomBytes } from 'node:crypto'
import { io, type Socket } from 'socket.io-client'
import { type Fact, type Op, textOfOp } from '#core/log/op.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import type { DownEvents, UpEvents } from '#shared/events.ts'
import type { Followed } from '#shared/messages/follow.ts'
import type { Pushed } from '#shared/messages/push.ts'
import { protocolVersion } from '#shared/protocol.ts'

export type PhoneSocket = Socket<DownEvents, UpEvents>

/** A phone on the wire: no storage, no screen, the messages alone. */
export interface WirePhone {
  readonly socket: PhoneSocket
  readonly device: DeviceId
  readonly group: GroupId
  nextScore(): string
}

interface Secret {
  readonly secret: string
  readonly hash: string
}

function makeSecret(): Secret {
  const secret = randomBytes(16).toString('base64url')
  return { secret, hash: createHash('sha256').update(secret).digest('hex') }
}

/** Groups of four phones in one outing, each phone a scorer of its group, followed and ready. */
export async function startPhones(port: number, groups: number): Promise<readonly WirePhone[]> {
  const log = `bench-${randomBytes(6).toString('hex')}` as LogId
  const groupIds = Array.from({ length: groups }, (_, i) => `g${i + 1}` as GroupId)
  const invites = new Map(groupIds.map(group => [group, makeSecret()]))
  const desk = makeSecret()
  const founder = connect(port, { log, device: 'desk' as DeviceId, key: desk.secret, invite: null })
  await whenConnected(founder)
  await push(founder, [textOfOp(founding(log, desk.hash, groupIds, invites))])
  founder.disconnect()
  const phones = groupIds.flatMap(group => [1, 2, 3, 4].map(i => ({ group, device: `${group}-p${i}` as DeviceId })))
  return Promise.all(phones.map(phone => startPhone(port, log, phone, invites.get(phone.group) ?? makeSecret())))
}

function founding(log: LogId, hash: string, groups: readonly GroupId[], invites: ReadonlyMap<GroupId, Secret>): Op {
  const key = { hash, role: 'desk', group: null, label: 'Desk', invite: null }
  const facts: Fact[] = [{ key: makeKey('key', { device: 'desk' }), value: key, replaces: [] }]
  for (const group of groups) {
    const invite = { hash: invites.get(group)?.hash ?? '', role: 'scorer', group, label: group }
    facts.push({ key: makeKey('invite', { invite: group }), value: invite, replaces: [] })
    facts.push({ key: makeKey('group', { group }), value: { name: group }, replaces: [] })
  }
  return { log, scope: null, device: 'desk' as DeviceId, n: 1, tick: 1, at: Date.now(), act: 'outing started', facts }
}

async function startPhone(
  port: number,
  log: LogId,
  { group, device }: { readonly group: GroupId; readonly device: DeviceId },
  invite: Secret,
): Promise<WirePhone> {
  const key = makeSecret()
  const socket = connect(port, { log, device, key: key.secret, invite: { id: group, secret: invite.secret } })
  await whenConnected(socket)
  const grant = { hash: key.hash, role: 'scorer', group, label: device, invite: group }
  const facts = [{ key: makeKey('key', { device }), value: grant, replaces: [] }]
  await push(socket, [
    textOfOp({ log, scope: null, device, n: 1, tick: 2, at: Date.now(), act: 'phone joined', facts }),
  ])
  await follow(socket, `g/${group}`)
  let n = 1
  return { socket, device, group, nextScore: () => scoreText(log, group, device, ++n) }
}

/**
 * A score as a phone writes it: another hole each time, then over again. Put together by hand, for 128 phones share
 * one processor here; the server takes nothing but the canonical text.
 */
function scoreText(log: LogId, group: GroupId, device: DeviceId, n: number): string {
  const key = `g/${group}/score/${device}/${(n % 18) + 1}/${(Math.floor(n / 18) % 9) + 1}/card`
  const fact = `{"key":"${key}","replaces":[],"value":${3 + (n % 5)}}`
  const [head, tail] = [
    `{"act":"scored","at":${Date.now()},"device":"${device}"`,
    `"scope":"${group}","tick":${n + 2}}`,
  ]
  return `${head},"facts":[${fact}],"log":"${log}","n":${n},${tail}`
}

function connect(port: number, auth: object): PhoneSocket {
  return io(`http://127.0.0.1:${port}`, {
    transports: ['websocket'],
    forceNew: true,
    auth: { protocol: protocolVersion, ...auth },
  })
}

const whenConnected = (socket: PhoneSocket): Promise<void> =>
  new Promise((resolve, reject) => {
    socket.once('connect', () => resolve())
    socket.once('connect_error', reject)
  })

export function push(socket: PhoneSocket, ops: string[]): Promise<Pushed> {
  return new Promise((resolve, reject) => {
    socket.emit('push', { ops }, answer => {
      if ('verdicts' in answer && answer.verdicts.every(({ kind }) => kind === 'stored')) resolve(answer)
      else reject(new Error(`push answered ${JSON.stringify(answer)}`))
    })
  })
}

function follow(socket: PhoneSocket, feed: string): Promise<Followed> {
  return new Promise((resolve, reject) => {
    socket.emit('follow', { era: null, feeds: [{ feed, after: 0 }] }, answer => {
      if (answer.kind === 'followed') resolve(answer)
      else reject(new Error(`follow answered ${JSON.stringify(answer)}`))
    })
  })
}
