/** Works on plain http too, where `crypto.randomUUID` is missing. */
const bytesOf = (count: number): Uint8Array => crypto.getRandomValues(new Uint8Array(count))

const base32 = 'abcdefghijklmnopqrstuvwxyz234567'

/** A new id of small letters and digits: 16 characters are 80 bits. */
export const createId = (length = 16): string => Array.from(bytesOf(length), byte => base32[byte & 31]).join('')

/** A new secret of 128 bits in base64url. */
export const createSecret = (): string =>
  btoa(String.fromCharCode(...bytesOf(16)))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '')

/** A whole number below `count`, each as likely as any other. */
function randomBelow(count: number): number {
  const whole = 2 ** 32 - (2 ** 32 % count)
  for (;;) {
    const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1))
    // What lies beyond a whole number of rounds would make the first numbers likelier.
    if (drawn < whole) return drawn % count
  }
}

/** A list in an order that nobody can foresee, each as likely as any other: balls thrown up. */
export function thrownUp<T>(list: readonly T[]): T[] {
  const left = [...list]
  const thrown: T[] = []
  while (left.length > 0) thrown.push(...left.splice(randomBelow(left.length), 1))
  return thrown
}
