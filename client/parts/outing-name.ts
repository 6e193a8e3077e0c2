import { formatDay, formatDots } from '../words/figures.ts'
import { say } from '../words/say-any.ts'

interface Known {
  readonly title: string | null
  readonly courseName: string | null
  /** ISO 8601, as it is kept. */
  readonly day: string | null
}

/** What an outing goes by: its title, or the course where it has none. */
export const outingName = ({ title, courseName }: Omit<Known, 'day'>): string =>
  title ?? courseName ?? say('home-untitled')

/** What is told beside the name: "Quillmoor · 16 May 2026"; empty where nothing more is known. */
export const besideName = ({ title, courseName, day }: Known, more: string | null = null): string =>
  formatDots([title === null || title === courseName ? null : courseName, day && formatDay(day), more])
