/** One question to talk about: asked in a child’s words, answered in a grown-up’s. */
export interface TalkCard {
  readonly id: string;
  readonly ask: readonly string[];
  readonly answer: string;
}
