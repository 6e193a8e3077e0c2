import { type Fact, type Op, withdrawn } from '#core/log/op.ts'
import type { FactValues, KeyParts } from '#core/outing/facts.ts'
import { parseKey } from '#core/outing/keys.ts'
import { must } from '#core/values/assert.ts'
import type { Claim, Voiding } from '../store/store.ts'

/** What an op writes into the access table. */
export interface AccessChange {
  readonly claims: readonly Claim[]
  readonly voidings: readonly Voiding[]
}

/** Reads an op that has been parsed: its values are of their kinds. */
export function accessChangeOf({ facts }: Op): AccessChange {
  const claims: Claim[] = []
  const voidings: Voiding[] = []
  for (const [index, fact] of facts.entries()) {
    const parts = parseKey(fact.key)
    if (parts === null) continue
    const claim = claimOf(parts, fact, `facts[${index}].key`)
    if (claim) claims.push(claim)
    const voiding = voidingOf(parts, fact)
    if (voiding) voidings.push(voiding)
  }
  return { claims, voidings }
}

function claimOf({ kind, device, invite }: KeyParts, { value }: Fact, path: string): Claim | null {
  if ((kind !== 'key' && kind !== 'invite') || value === withdrawn) return null
  const { hash, role, group } = value as unknown as FactValues['key' | 'invite']
  return { kind, name: must(kind === 'key' ? device : invite, 'the key names it'), hash, role, group, path }
}

/** A withdrawn key or invite is as good as a void one. */
function voidingOf({ kind, device, invite }: KeyParts, { value }: Fact): Voiding | null {
  const isWithdrawn = value === withdrawn
  switch (kind) {
    case 'key':
    case 'voidKey':
      if (kind === 'key' && !isWithdrawn) return null
      return { kind: 'key', name: must(device, 'the key names it'), stands: kind === 'key' || !isWithdrawn }
    case 'invite':
    case 'voidInvite':
      if (kind === 'invite' && !isWithdrawn) return null
      return { kind: 'invite', name: must(invite, 'the key names it'), stands: kind === 'invite' || !isWithdrawn }
    default:
      return null
  }
}
