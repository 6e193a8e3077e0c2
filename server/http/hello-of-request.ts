import type { Request } from 'express'
import { err, ok, type Result } from '#core/values/result.ts'
import { helloSchema } from '#shared/messages/hello.ts'
import { pathOfIssue } from '#shared/op.ts'
import { type Shown, shownOf } from '../access/shown.ts'

/** The headers came in with this version of the wire contract; later ones say theirs in X-Protocol. */
const firstProtocol = 1

/** Who asks, by header: `Authorization: Bearer <device>:<secret>`, and `X-Invite: <id>:<secret>` while it has one. */
export function shownOfRequest(request: Request): Result<Shown, string> {
  const [, device, key] = /^Bearer ([^:]+):(.+)$/.exec(request.get('authorization') ?? '') ?? []
  if (device === undefined) return err('authorization')
  const parsed = helloSchema.safeParse({
    protocol: Number(request.get('x-protocol') ?? firstProtocol),
    log: request.params.log,
    device,
    key,
    invite: inviteOf(request.get('x-invite')),
  })
  return parsed.success ? ok(shownOf(parsed.data)) : err(pathOfIssue(parsed.error.issues[0]))
}

function inviteOf(header: string | undefined): { id: string; secret: string } | null {
  if (header === undefined) return null
  const [id = '', secret = ''] = header.split(':', 2)
  return { id, secret }
}
