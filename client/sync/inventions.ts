import type { DeviceId } from '#core/values/ids.ts'

/** What a phone makes up: nothing random is drawn anywhere else. */
export interface Inventions {
  readonly device: () => DeviceId
  readonly secret: () => string
  /** SHA-256 in hex of a secret's text. */
  readonly hash: (secret: string) => string
}
