import { networkInterfaces } from 'node:os'
import { renderUnicodeCompact } from 'uqr'

/** The machine's own addresses on the network, those that a phone nearby can reach. */
export const networkAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap(list => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address)

interface Reached {
  readonly host: string
  readonly port: number
  readonly isTls: boolean
  readonly publicUrl: string | null
}

/** What the terminal shows once phones can come: the addresses, and one of them as a QR code. */
export function greetingOf({ host, port, isTls, publicUrl }: Reached, addresses: readonly string[]): string {
  const urlOf = (name: string) => `${isTls ? 'https' : 'http'}://${name.includes(':') ? `[${name}]` : name}:${port}`
  const isOpen = host === '0.0.0.0' || host === '::'
  const here = urlOf(isOpen ? 'localhost' : host)
  const [network = null] = isOpen ? addresses.map(urlOf) : []
  const outside = publicUrl ?? network
  const lines = ['', 'Six Threes is ready.', '', `  this machine   ${here}`]
  if (network) lines.push(`  the network    ${network}`)
  if (publicUrl) lines.push(`  everywhere     ${publicUrl}`)
  if (outside) lines.push('', renderUnicodeCompact(outside, { border: 2 }))
  return `${lines.join('\n')}\n`
}
