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
