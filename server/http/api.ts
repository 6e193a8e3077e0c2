import express, { type Request, type RequestHandler, type Response, Router } from 'express'
import { limits } from '#shared/limits.ts'
import type { WireFault } from '#shared/messages/fault.ts'
import type { SnapshotAnswer } from '#shared/messages/snapshot.ts'
import { protocolVersion } from '#shared/protocol.ts'
import type { AskEvent, Asking } from '../live/asking.ts'
import { type Counted, type Dispatch, fault } from '../live/dispatch.ts'
import type { Room } from '../live/room.ts'
import { shownOfRequest } from './hello-of-request.ts'

const statusOfFault: Readonly<Record<WireFault['code'], number>> = {
  'wrong shape': 400,
  'not json': 400,
  'too large': 413,
  'too many': 429,
  internal: 500,
}

export const sendFault = (response: Response, code: WireFault['code'], path: string): void =>
  void response.status(statusOfFault[code]).json(fault(code, path))

/** What is no fault is an answer. */
function sendAnswer(response: Response, answered: unknown): void {
  const { kind, code, path } = answered as WireFault
  if (kind === 'fault') sendFault(response, code, path)
  else response.json(answered)
}

export interface ApiOptions {
  readonly room: Room
  readonly dispatch: Dispatch
  readonly counted: Counted
  readonly asking: Asking
  readonly addressOf: (request: Request) => string
  /** Where phones reach this server. */
  readonly outsideUrl: () => string | null
}

/** The same messages by HTTP, for networks that block web sockets; what is no fault is answered with 200. */
export function createApi({ room, dispatch, counted, asking, addressOf, outsideUrl }: ApiOptions): Router {
  const router = Router()
  const json = express.json({ limit: limits.frameBytes, type: () => true })
  router.use((_request, response, next) => {
    response.setHeader('Cache-Control', 'no-store')
    next()
  })

  const answer =
    (event: string, messageOf: (request: Request) => unknown): RequestHandler =>
    async (request, response) => {
      const shown = shownOfRequest(request)
      if (!shown.ok) return sendFault(response, 'wrong shape', shown.error)
      const caller = { shown: shown.value, address: addressOf(request), link: null }
      sendAnswer(response, await dispatch(caller, event, messageOf(request)))
    }
  const askingAnswer =
    (event: AskEvent): RequestHandler =>
    async (request, response) =>
      sendAnswer(response, await asking(addressOf(request), event, request.body))

  router.get('/probe', (_request, response) => {
    response.json({ product: 'six-threes', protocol: protocolVersion, outsideUrl: outsideUrl() })
  })
  router.post(
    '/logs/:log/ops',
    json,
    answer('push', request => request.body),
  )
  router.get('/logs/:log/ops', answer('pull', pullOfQuery))
  router.post(
    '/logs/:log/exchange',
    json,
    answer('exchange', request => request.body),
  )
  for (const event of ['words', 'admit', 'delete'] as const) {
    router.post(
      `/logs/:log/${event}`,
      json,
      answer(event, request => request.body),
    )
  }
  router.get(
    '/logs/:log/askers',
    answer('askers', request => request.query),
  )
  router.get(
    '/logs/:log/offers',
    answer('offers', request => request.query),
  )
  for (const event of ['ask', 'wait'] as const) router.post(`/${event}`, json, askingAnswer(event))
  router.get('/logs/:log/snapshot', snapshotHandler({ room, counted, addressOf }))
  router.use((_request, response) => {
    response.status(404).json(fault('wrong shape', 'path'))
  })
  return router
}

/** `after` as a number; anything else stays as it is, for the schema to name. */
function pullOfQuery({ query }: Request): unknown {
  const { after, ...rest } = query
  return { ...rest, after: typeof after === 'string' && /^\d{1,16}$/.test(after) ? Number(after) : after }
}

/** The text of each answer, made once for all who ask before the next op. */
const texts = new WeakMap<SnapshotAnswer, string>()

const snapshotHandler =
  ({ room, counted, addressOf }: Pick<ApiOptions, 'room' | 'counted' | 'addressOf'>): RequestHandler =>
  async (request, response) => {
    if (request.query.feed !== undefined && request.query.feed !== 'all') {
      return sendFault(response, 'wrong shape', 'feed')
    }
    const shown = shownOfRequest(request)
    if (!shown.ok) return sendFault(response, 'wrong shape', shown.error)
    const caller = { shown: shown.value, address: addressOf(request), link: null }
    const answer = await counted(caller, () => room.snapshot(caller.shown), { kind: 'stranger', why: 'busy' })
    sendSnapshot(answer, request, response)
  }

const tagsOf = (request: Request): string[] =>
  (request.get('if-none-match') ?? '').split(',').map(tag => tag.trim().replace(/^W\//, ''))

function sendSnapshot(answer: SnapshotAnswer, request: Request, response: Response): void {
  if (answer.kind === 'snapshot') {
    const tag = `"${answer.era}-${answer.upTo}"`
    response.setHeader('ETag', tag)
    response.setHeader('Cache-Control', 'private, no-cache')
    response.vary('Authorization')
    // Not by `request.fresh`: a page that names its tag itself sends `no-cache` along with it.
    if (tagsOf(request).includes(tag)) return void response.status(304).end()
  }
  const text = texts.get(answer) ?? JSON.stringify(answer)
  texts.set(answer, text)
  response.type('json').send(text)
}
