/** The closed lists of words that entries are written in. */

/** What an investigation measures, again and again. */
export const quantities = ['plant-height', 'rain', 'shadow', 'length', 'daily-kind'] as const;
export type Quantity = (typeof quantities)[number];

/** What can be written for a day that has no number. They never merge, and none of them is 0. */
export const dayStates = ['not-up-yet', 'missed', 'no-sun', 'trace', 'lost'] as const;
export type DayState = (typeof dayStates)[number];

/** Which numbers and graphs suit a child: school grades 1 to 3. */
export const stages = ['grade-1', 'grade-2', 'grade-3'] as const;
export type Stage = (typeof stages)[number];

export const roles = ['child', 'grown-up'] as const;
export type Role = (typeof roles)[number];

export const hands = ['right', 'left'] as const;
export type Hand = (typeof hands)[number];

/** A person is known by a nickname, a colour and a shape: nothing more is asked. */
export const shapes = [
  'leaf',
  'drop',
  'sun',
  'boot',
  'snail',
  'star',
  'pebble',
  'feather',
] as const;
export type Shape = (typeof shapes)[number];

export const weatherWords = ['sun', 'cloud', 'rain', 'snow', 'wind', 'fog'] as const;
export type WeatherWord = (typeof weatherWords)[number];

/** How a specimen's log came to its end. */
export const endings = ['lost', 'finished'] as const;
export type Ending = (typeof endings)[number];

/** Lengths of one's own body, or always at hand, that help to guess another. */
export const helperLengths = [
  'little-finger',
  'thumb',
  'hand-span',
  'foot',
  'step',
  'reach',
  'ruler',
] as const;
export type HelperLength = (typeof helperLengths)[number];

export const doubtAnswers = ['read-so', 'look-again', 'other-unit'] as const;
export type DoubtAnswer = (typeof doubtAnswers)[number];

/** What is looked at beside the height, because taller is not always healthier. */
export const secondMeasures = ['leaves', 'colour', 'stands'] as const;
export type SecondMeasure = (typeof secondMeasures)[number];

export const leafColours = [
  'green',
  'dark-green',
  'pale-green',
  'yellow',
  'white',
  'brown',
] as const;
export type LeafColour = (typeof leafColours)[number];

export const stemStands = ['by-itself', 'leans', 'lies-down'] as const;
export type StemStand = (typeof stemStands)[number];

export const lessonMinutes = [20, 30, 40] as const;
export type LessonMinutes = (typeof lessonMinutes)[number];

/** How a skill showed itself: evidence, never a score. */
export const evidenceLevels = ['seen', 'with-help', 'alone'] as const;
export type EvidenceLevel = (typeof evidenceLevels)[number];

export const ownQuestionLevels = ['read', 'between'] as const;
export type OwnQuestionLevel = (typeof ownQuestionLevels)[number];

/** Whether an item of the daily review can rest a while, or comes again on the next school day. */
export const reviewOutcomes = ['rest', 'again'] as const;
export type ReviewOutcome = (typeof reviewOutcomes)[number];

/** Where an investigation began: with the child's own question, or as a made-up sample. */
export const origins = ['ours', 'made-up'] as const;
export type Origin = (typeof origins)[number];
