import type { IncomingMessage } from 'node:http'
import compression from 'compression'
import express, { type ErrorRequestHandler, type Express } from 'express'
import type { Logger } from 'pino'
import type { Asking } from '../live/asking.ts'
import type { Counted, Dispatch } from '../live/dispatch.ts'
import type { Room } from '../live/room.ts'
import type { Store } from '../store/store.ts'
import { createApi, sendFault } from './api.ts'
import { clientFiles } from './client-files.ts'
import { requestLog } from './request-log.ts'

export interface HttpOptions {
  readonly room: Room
  readonly dispatch: Dispatch
  readonly counted: Counted
  readonly asking: Asking
  readonly store: Store
  readonly logger: Logger
  readonly clientFolder: string
  readonly isOwnOrigin: (request: IncomingMessage) => boolean
  readonly addressOf: (request: IncomingMessage) => string
  readonly outsideUrl: () => string | null
}

export function createHttpApp(options: HttpOptions): Express {
  const app = express()
  app.disable('x-powered-by')
  app.set('query parser', 'simple')
  app.set('etag', false)
  app.use(requestLog(options.logger))
  app.use(compression())
  app.use((request, response, next) => {
    if (request.method === 'GET' || request.method === 'HEAD' || options.isOwnOrigin(request)) return next()
    response.status(403).json({ kind: 'fault', code: 'wrong shape', path: 'origin' })
  })
  app.get('/healthz', async (_request, response) => {
    const trouble = await options.store.trouble()
    response.setHeader('Cache-Control', 'no-store')
    if (trouble) response.status(503).json({ status: 'failing', reason: trouble })
    else response.json({ status: 'ok', uptimeS: Math.round(process.uptime()) })
  })
  app.use('/api', createApi(options))
  app.use(clientFiles(options.clientFolder))
  app.use((_request, response) => void response.status(404).type('text').send('Not found'))
  app.use(errorHandler(options.logger))
  return app
}

interface BodyError {
  readonly type?: unknown
  readonly status?: unknown
}

/** The last resort of every request: says what is wrong with the body, and nothing about ourselves. */
function errorHandler(logger: Logger): ErrorRequestHandler {
  return (error: BodyError, _request, response, next) => {
    if (response.headersSent) return next(error)
    if (error.type === 'entity.too.large') return sendFault(response, 'too large', '')
    if (error.type === 'entity.parse.failed') return sendFault(response, 'not json', '')
    if (typeof error.status === 'number' && error.status < 500) return sendFault(response, 'wrong shape', '')
    logger.error({ err: error }, 'request failed')
    sendFault(response, 'internal', '')
  }
}
