import { join } from 'node:path'
import express, { type RequestHandler, Router } from 'express'

const aYearS = 31_536_000

/** The page: names under assets/ carry a hash and never change; everything else is asked for again. */
export function clientFiles(folder: string): RequestHandler {
  const router = Router()
  router.use(
    express.static(folder, {
      index: false,
      redirect: false,
      setHeaders: (response, path) => {
        const isHashed = path.startsWith(join(folder, 'assets'))
        response.setHeader('Cache-Control', isHashed ? `public, max-age=${aYearS}, immutable` : 'no-cache')
      },
    }),
  )
  router.get('/{*path}', (request, response, next) => {
    // A missing file is missing: a page in its place would be cached as a script.
    if (/\.[a-z0-9]+$/i.test(request.path) || !request.accepts('html')) return next()
    response.setHeader('Cache-Control', 'no-cache')
    response.sendFile('index.html', { root: folder }, error => error && next())
  })
  return router
}
