import { expect, it } from 'vitest'
import { copiedFile, damagedPage, secondServer } from './data-folder.ts'
import { expectWell } from './kit/well.ts'

it('a damaged page of the database is named in a sentence, and the server changes no file and does not start', async () => {
  const outcome = await damagedPage(2)
  expectWell(outcome)
  expect(outcome.notes.sentence).toMatch(/^The database DATA_DIR\/six-threes\.db is damaged /)
})

it('a second server on the same data ends with a sentence, and the first goes on under load', async () => {
  expectWell(await secondServer(1))
})

it('a copied file in the place of a backup is refused; after a backup the phones fill in what it lacks', async () => {
  const outcome = await copiedFile(1)
  expectWell(outcome)
  expect(outcome.notes.eras).toBe(2)
})
