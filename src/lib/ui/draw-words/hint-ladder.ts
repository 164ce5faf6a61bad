/**
 * Three steps for one mistake: where to look, the idea, and doing it beside a grown-up. One is
 * shown at a time, in words a first grader can read; none tells what the right number would be.
 */
export type HintLadder = readonly [place: string, idea: string, besideGrownUp: string];
