import type { RequestHandler } from 'express'
import type { Logger } from 'pino'

/** Our own paths: what else stands in one may be a link whose `#` was lost on the way, with its secret. */
const own =
  /^\/(healthz|api\/(probe|ask|wait|logs\/[a-z0-9-]{1,32}\/[a-z]{1,16})|(assets\/)?[\w-]{1,80}\.[a-z0-9]{1,12})?$/

/** One line a request: no query, no header, no body, for secrets travel in some of them. */
export const requestLog =
  (logger: Logger): RequestHandler =>
  (request, response, next) => {
    const startedAt = performance.now()
    const { method } = request
    const path = own.test(request.path) ? request.path : '/…'
    response.once('close', () => {
      const ms = Math.round((performance.now() - startedAt) * 10) / 10
      logger.info({ method, path, status: response.statusCode, ms }, 'request')
    })
    next()
  }
