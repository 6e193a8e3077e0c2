/**
 * Sides that agreed before play to concede holes to each other to shorten the match: both are disqualified where they knew
 * that this is not allowed, else the match stands as played.
 * Source: Rules of Golf, clarification 3.2b(1)/1 and rule 1.3b(1); R&A and USGA; 2019 and 2023.
 */
export const ruleOnTradedHoles = (knew: boolean): 'both-disqualified' | 'stands-as-played' =>
  knew ? 'both-disqualified' : 'stands-as-played'
