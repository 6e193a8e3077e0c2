import { networkInterfaces } from 'node:os'
import { renderUnicodeCompact } from 'uqr'

/** The machine's own addresses on the network, those that a phone nearby can reach. */
export const networkAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap(list => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address)

export interface Reached {
  readonly host: string
  readonly port: number
  readonly isTls: boolean
  readonly publicUrl: string | null
}

const urlOf = ({ port, isTls }: Reached, name: string): string =>
  `${isTls ? 'https' : 'http'}://${name.includes(':') ? `[${name}]` : name}:${port}`

const isOpen = ({ host }: Reached): boolean => host === '0.0.0.0' || host === '::'

/** Where phones reach this server: the public address, else this machine's on the network; null when neither is known. */
export function outsideUrl(reached: Reached, addresses: readonly string[]): string | null {
  const [network] = isOpen(reached) ? addresses : []
  return reached.publicUrl ?? (network === undefined ? null : urlOf(reached, network))
}

/** What the terminal shows once phones can come: the addresses, and one of them as a QR code. */
export function greetingOf(reached: Reached, addresses: readonly string[]): string {
  const { host, publicUrl } = reached
  const here = urlOf(reached, isOpen(reached) ? 'localhost' : host)
  const network = outsideUrl({ ...reached, publicUrl: null }, addresses)
  const outside = outsideUrl(reached, addresses)
  const lines = ['', 'Six Threes is ready.', '', `  this machine   ${here}`]
  if (network) lines.push(`  the network    ${network}`)
  if (publicUrl) lines.push(`  everywhere     ${publicUrl}`)
  if (outside) lines.push('', renderUnicodeCompact(outside, { border: 2 }))
  return `${lines.join('\n')}\n`
}
