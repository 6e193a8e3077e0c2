import { expect, test } from 'vitest'
import { createId, createSecret } from '#client/device/random-ids.ts'
import { hashOfSecret } from '#client/device/secret-hash.ts'
import { isId } from '#core/values/ids.ts'
import { secretText } from '#shared/atoms.ts'

// FIPS 180-4, SHA-256, the one-block and the two-block example messages (NIST, Cryptographic Standards and Guidelines,
// "Examples with Intermediate Values").
test.each([
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
])('SHA-256 of %j is the published one', (text, published) => {
  expect(hashOfSecret(text)).toBe(published)
})

test('ids can stand in a key, secrets on the wire, and none comes twice', () => {
  const ids = Array.from({ length: 500 }, () => createId())
  const secrets = Array.from({ length: 500 }, createSecret)
  expect(ids.every(isId)).toBe(true)
  expect(secrets.every(secret => secret.length === 22 && secretText.safeParse(secret).success)).toBe(true)
  expect(new Set([...ids, ...secrets]).size).toBe(1_000)
})
