import type { RequestHandler } from 'express'
import type { Logger } from 'pino'

/** One line a request: no query, no header, no body, for secrets travel in some of them. */
export const requestLog =
  (logger: Logger): RequestHandler =>
  (request, response, next) => {
    const startedAt = performance.now()
    const { method, path } = request
    response.once('close', () => {
      const ms = Math.round((performance.now() - startedAt) * 10) / 10
      logger.info({ method, path: path.slice(0, 200), status: response.statusCode, ms }, 'request')
    })
    next()
  }
