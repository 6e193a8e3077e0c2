import type { IncomingMessage } from 'node:http'

/** Whether a request comes from our own page, or from no page at all (a command line, a native program). */
export const createOriginCheck =
  (publicUrl: string | null) =>
  ({ headers }: Pick<IncomingMessage, 'headers'>): boolean => {
    const { origin, host } = headers
    if (origin === undefined) return true
    if (publicUrl !== null && origin === new URL(publicUrl).origin) return true
    return URL.canParse(origin) && new URL(origin).host === host
  }
