import { err, ok, type Result } from '#core/values/result.ts'
import type { WatchSettings } from './watch/keeping-watch.ts'

export const logLevels = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'] as const
export type LogLevel = (typeof logLevels)[number]

/** A field of a thousand phones and its watchers, twice over, may stand behind one address of a clubhouse. */
export const defaultLinksPerAddress = 4_000

/** Every name that is read of the environment; server/README.md has a row for each, which a test checks. */
export const settingNames = [
  'PORT',
  'HOST',
  'DATA_DIR',
  'DATABASE_URL',
  'PUBLIC_URL',
  'TRUST_PROXY',
  'TLS_CERT',
  'TLS_KEY',
  'LOG_LEVEL',
  'BACKUP_ALARM_HOURS',
  'RETENTION_DAYS',
  'METRICS_PORT',
  'LINKS_PER_ADDRESS',
] as const
export type SettingName = (typeof settingNames)[number]

export interface Settings extends Required<WatchSettings> {
  readonly port: number
  readonly host: string
  readonly dataFolder: string
  /** Where phones reach the server, when that is not the machine itself: `https://golf.example`. */
  readonly publicUrl: string | null
  readonly trustedHops: number
  readonly tlsFiles: { readonly cert: string; readonly key: string } | null
  readonly logLevel: LogLevel
  /** Phones and boards from one address at once; 0: no such limit. */
  readonly linksPerAddress: number
}

type Env = Readonly<Record<string, string | undefined>>
type Said = (name: SettingName) => string | null

/** Reads the environment; the failure is one line for whoever set it. */
export function parseSettings(env: Env): Result<Settings, string> {
  const said: Said = name => env[name]?.trim() || null
  try {
    return ok(settingsSaid(said))
  } catch (error) {
    if (error instanceof WrongSetting) return err(error.message)
    throw error
  }
}

class WrongSetting extends Error {}

function settingsSaid(said: Said): Settings {
  if (said('DATABASE_URL')) {
    throw new WrongSetting('DATABASE_URL is not supported yet; leave it unset to use the embedded database.')
  }
  const port = countSaid(said, 'PORT', 'a whole number', 65_535) ?? 8686
  const metricsPort = countSaid(said, 'METRICS_PORT', 'a whole number', 65_535)
  if (metricsPort !== null && metricsPort === port && port !== 0) {
    throw new WrongSetting(`METRICS_PORT must be another port than PORT; both are ${port}.`)
  }
  return {
    port,
    host: said('HOST') ?? '0.0.0.0',
    dataFolder: said('DATA_DIR') ?? './data',
    publicUrl: publicUrlSaid(said),
    trustedHops: countSaid(said, 'TRUST_PROXY', 'the number of proxies before the server,', 10) ?? 0,
    tlsFiles: tlsFilesSaid(said),
    logLevel: logLevelSaid(said),
    backupAlarmHours: countSaid(said, 'BACKUP_ALARM_HOURS', 'whole hours (0: no alarm),', 10_000) ?? 48,
    retentionDays: countSaid(said, 'RETENTION_DAYS', 'whole days (0: nothing is deleted),', 36_500) ?? 0,
    metricsPort,
    linksPerAddress:
      countSaid(said, 'LINKS_PER_ADDRESS', 'a whole number (0: no limit),', 20_000) ?? defaultLinksPerAddress,
  }
}

/** Null when nothing is said. */
function countSaid(said: Said, name: SettingName, what: string, largest: number): number | null {
  const text = said(name)
  if (text === null) return null
  const number = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN
  if (number <= largest) return number
  throw new WrongSetting(`${name} must be ${what} from 0 to ${largest}; it is "${text}".`)
}

function publicUrlSaid(said: Said): string | null {
  const text = said('PUBLIC_URL')
  if (text === null || isWebAddress(text)) return text && new URL(text).origin
  throw new WrongSetting(`PUBLIC_URL must be an address like https://golf.example with no path; it is "${text}".`)
}

function tlsFilesSaid(said: Said): Settings['tlsFiles'] {
  const [cert, key] = [said('TLS_CERT'), said('TLS_KEY')]
  if (cert !== null && key !== null) return { cert, key }
  if (cert === null && key === null) return null
  throw new WrongSetting('TLS_CERT and TLS_KEY must be set together.')
}

function logLevelSaid(said: Said): LogLevel {
  const text = said('LOG_LEVEL') ?? 'info'
  if (isLogLevel(text)) return text
  throw new WrongSetting(`LOG_LEVEL must be one of ${logLevels.join(', ')}; it is "${text}".`)
}

const isLogLevel = (text: string): text is LogLevel => (logLevels as readonly string[]).includes(text)

function isWebAddress(text: string): boolean {
  if (!URL.canParse(text)) return false
  const { protocol, pathname, search, hash } = new URL(text)
  return (protocol === 'http:' || protocol === 'https:') && pathname === '/' && search === '' && hash === ''
}
