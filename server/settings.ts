import { err, ok, type Result } from '#core/values/result.ts'

export const logLevels = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'] as const
export type LogLevel = (typeof logLevels)[number]

export interface Settings {
  readonly port: number
  readonly host: string
  readonly dataFolder: string
  /** Where phones reach the server, when that is not the machine itself: `https://golf.example`. */
  readonly publicUrl: string | null
  readonly trustedHops: number
  readonly tlsFiles: { readonly cert: string; readonly key: string } | null
  readonly logLevel: LogLevel
}

type Env = Readonly<Record<string, string | undefined>>

/** Reads the environment; the failure is one line for whoever set it. */
export function parseSettings(env: Env): Result<Settings, string> {
  const said = (name: string) => env[name]?.trim() || null
  if (said('DATABASE_URL'))
    return err('DATABASE_URL is not supported yet; leave it unset to use the embedded database.')
  const port = parseCount(said('PORT') ?? '8686', 65_535)
  if (port === null) return err(`PORT must be a whole number from 0 to 65535; it is "${said('PORT')}".`)
  const trustedHops = parseCount(said('TRUST_PROXY') ?? '0', 10)
  if (trustedHops === null) {
    return err(`TRUST_PROXY must be the number of proxies before the server, 0 to 10; it is "${said('TRUST_PROXY')}".`)
  }
  const publicUrl = said('PUBLIC_URL')
  if (publicUrl !== null && !isWebAddress(publicUrl)) {
    return err(`PUBLIC_URL must be an address like https://golf.example with no path; it is "${publicUrl}".`)
  }
  const logLevel = said('LOG_LEVEL') ?? 'info'
  if (!isLogLevel(logLevel)) return err(`LOG_LEVEL must be one of ${logLevels.join(', ')}; it is "${logLevel}".`)
  const [cert, key] = [said('TLS_CERT'), said('TLS_KEY')]
  if ((cert === null) !== (key === null)) return err('TLS_CERT and TLS_KEY must be set together.')
  return ok({
    port,
    host: said('HOST') ?? '0.0.0.0',
    dataFolder: said('DATA_DIR') ?? './data',
    publicUrl: publicUrl === null ? null : new URL(publicUrl).origin,
    trustedHops,
    tlsFiles: cert !== null && key !== null ? { cert, key } : null,
    logLevel,
  })
}

const isLogLevel = (text: string): text is LogLevel => (logLevels as readonly string[]).includes(text)

function parseCount(text: string, largest: number): number | null {
  const number = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN
  return number <= largest ? number : null
}

function isWebAddress(text: string): boolean {
  if (!URL.canParse(text)) return false
  const { protocol, pathname, search, hash } = new URL(text)
  return (protocol === 'http:' || protocol === 'https:') && pathname === '/' && search === '' && hash === ''
}
