import type { DeviceId } from '#core/values/ids.ts'
import { createId, createSecret } from '../device/random-ids.ts'
import { hashOfSecret } from '../device/secret-hash.ts'
import type { Inventions } from '../sync/inventions.ts'
import { type Renaming, renamingWith } from '../sync/rename.ts'

/** What this phone makes up when it takes a name or gives an invite. */
export const inventions: Inventions = {
  device: () => createId() as DeviceId,
  secret: createSecret,
  hash: hashOfSecret,
}

export const renaming: Renaming = renamingWith(inventions)
