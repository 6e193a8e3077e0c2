import * as z from 'zod/mini'
import { deviceId, inviteId, logId, secretText } from '#shared/atoms.ts'

/**
 * The `auth` of a socket, and by header of an HTTP request: who asks, for which log. Secrets stand nowhere else.
 * The invite is shown as long as the phone has it: a server that lost the key lets it in by that.
 */
export const helloSchema = z.strictObject({
  protocol: z.int(),
  log: logId,
  device: deviceId,
  key: secretText,
  invite: z.nullable(z.strictObject({ id: inviteId, secret: secretText })),
})

export type Hello = z.infer<typeof helloSchema>
