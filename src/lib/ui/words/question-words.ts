import { daysBetween, formatDay } from '#core/calendar';
import { formatExact, formatMeasured } from '#core/measure';
import type { EntryQuestion } from '#core/series';

/** A question about an entry before it is written, with its two answers. Never "wrong". */
export interface QuestionWords {
  readonly question: string;
  readonly yes: string;
  readonly again: string;
}

export function questionWords(question: EntryQuestion): QuestionWords {
  switch (question.kind) {
    case 'day-not-come-yet':
      return {
        question: `${formatDay(question.day, 'long')} has not come yet. Is it the right day?`,
        yes: 'Yes, that day',
        again: 'I want to look again',
      };
    case 'before-the-start': {
      const days = daysBetween(question.day, question.startedOn);
      return {
        question: `That is ${days === 1 ? '1 day' : `${days} days`} before you began. Is it the right day?`,
        yes: 'Yes, that day',
        again: 'I want to look again',
      };
    }
    case 'past-the-ruler': {
      const ruler =
        question.measured.unit === 'cm' ||
        question.measured.unit === 'mm' ||
        question.measured.unit === 'm'
          ? formatExact(question.rulerExact, 'cm', '1 cm')
          : formatExact(question.rulerExact, 'in', '1 in');
      return {
        question: `A ruler ends at ${ruler}. You wrote ${formatMeasured(question.measured)}. Did you read that?`,
        yes: 'Yes, I read that',
        again: 'I want to look again',
      };
    }
    case 'already-read-today':
      return {
        question: 'You wrote a number for this day. Keep both?',
        yes: 'Yes, keep both',
        again: 'I want to look again',
      };
  }
}
