/** A secret of a run, or where one may have been written. */
export interface Named<T> {
  readonly name: string
  readonly value: T
}

/** The forms in which a secret can stand somewhere: as it is, and as texts and addresses carry bytes. */
export function formsOf(secret: string): readonly Named<string>[] {
  const bytes = Buffer.from(secret, 'utf8')
  const hex = bytes.toString('hex')
  const percent = hex.replaceAll(/../g, '%$&')
  // What a secret in base64url is made of.
  const raw = Buffer.from(secret, 'base64url')
  const isBase64 = raw.length >= 8 && raw.toString('base64url') === secret
  const ofRaw = isBase64
    ? [
        { name: 'its bytes in hex', value: raw.toString('hex') },
        { name: 'its bytes in base64', value: raw.toString('base64').replace(/=+$/, '') },
      ]
    : []
  const forms = [
    { name: 'plain', value: secret },
    { name: 'base64url', value: bytes.toString('base64url') },
    { name: 'base64', value: bytes.toString('base64').replace(/=+$/, '') },
    { name: 'hex', value: hex },
    { name: 'hex in capitals', value: hex.toUpperCase() },
    { name: 'percent-encoded', value: encodeURIComponent(secret) },
    { name: 'percent-encoded byte by byte', value: percent },
    { name: 'percent-encoded in capitals', value: percent.toUpperCase() },
    { name: 'as a form sends it', value: new URLSearchParams([['', secret]]).toString().slice(1) },
    ...ofRaw,
  ]
  return forms.filter(({ value }, place) => forms.findIndex(other => other.value === value) === place)
}

/** Three words however they may be joined. */
export const joinsOf = (words: readonly string[]): readonly string[] =>
  [' ', '-', '', '_', ',', '/', '","'].map(between => words.join(between))

/** `the key of alder stands in the log, in hex`: every secret that stands in a place, in any form. */
export function secretsIn(places: readonly Named<string | Buffer>[], secrets: readonly Named<string>[]): string[] {
  return places.flatMap(place => {
    const bytes = typeof place.value === 'string' ? Buffer.from(place.value, 'utf8') : place.value
    return secrets.flatMap(secret =>
      formsOf(secret.value)
        .filter(({ value }) => bytes.includes(value))
        .map(form => `${secret.name} stands in ${place.name}, ${form.name}`),
    )
  })
}
