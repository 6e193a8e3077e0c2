/**
 * How hard a hole is for ranking stroke indexes, in tenths of a stroke over par for two players:
 * scratch value + bogey value - 2 x par, the values in tenths.
 * Source: Rules of Handicapping, Appendix E; association's reprint; 2020. The 2024 text takes a report of the association
 * instead.
 */
export const holeDifficultyTenths = (scratchValueTenths: number, bogeyValueTenths: number, par: number): number =>
  scratchValueTenths + bogeyValueTenths - 20 * par
