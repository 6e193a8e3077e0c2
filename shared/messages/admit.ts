import * as z from 'zod/mini'
import { idOf, inviteId, secretText } from '#shared/atoms.ts'
import { strangers } from './follow.ts'

/**
 * Up: lets somebody in by an invite of this phone's own rights, which the server passes on through its memory; null for
 * not now. The invite has to be stored already.
 */
export const admitSchema = z.strictObject({
  asker: idOf<string>(),
  invite: z.nullable(z.strictObject({ id: inviteId, secret: secretText })),
})
export type Admit = z.infer<typeof admitSchema>

/** `gone`: answered already, or too late. `invite unknown`: not stored yet. `not yours`: beyond what the words said. */
export const admittedSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('admitted') }),
  z.strictObject({ kind: z.literal('not admitted'), why: z.enum(['gone', 'invite unknown', 'not yours']) }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type Admitted = z.infer<typeof admittedSchema>
