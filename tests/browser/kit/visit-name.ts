/** What a look at a state is called among a test's annotations; the reporter counts them. */
export const visitType = 'free of accessibility faults by day and by night'

export const visitName = (screen: string, state: string): string => `${screen}: ${state}`
