import { describe, expect, it } from 'vitest';
import { answerWayOf } from '#core/questions';
import { asked, between, day, days, idea, long, many, order, said, slip, word } from './judging';

describe('an idea', () => {
  it('that the question offers to choose from is judged', () => {
    const offered = [idea('ask-which-most'), idea('ask-next-year'), idea('ask-how-many-in-all')];
    const cannot = asked('behind', offered[1]!, [slip('hardest-sum', offered[2])], {
      offered: order(...offered),
    });
    expect(said(cannot, offered[1]!)).toBe('right');
    expect(said(cannot, offered[2]!)).toBe('hardest-sum');
    const cross = asked('read', idea('cross-is-one-read'), [
      slip('mark-is-unit', idea('cross-is-a-unit')),
    ]);
    expect(said(cross, idea('cross-is-one-read'))).toBe('right');
    expect(said(cross, idea('cross-is-a-unit'))).toBe('mark-is-unit');
    expect(said(cross, word('One time'))).toBe('for-a-grown-up');
  });
  it('behind the data is for a grown-up, also inside an order', () => {
    const missed = order(idea('we-missed-it'), word('we were away'));
    for (const answer of [idea('we-missed-it'), missed]) {
      const why = asked('behind', answer, [slip('did-not-grow')]);
      expect(said(why, answer)).toBe('for-a-grown-up');
      expect(said(why, word('we were away'))).toBe('for-a-grown-up');
      expect(said(why, idea('did-not-grow'))).toBe('did-not-grow');
    }
  });
});

describe('a guess beyond the data', () => {
  const next = asked('beyond', between(long(8), long(10)), [
    slip('a-wish'),
    slip('blank-is-zero', long(0)),
  ]);
  it('needs a reason that a grown-up hears, inside the span or not', () => {
    for (const given of [long(8), long(9), long(30), many(9), between(long(8), long(10))]) {
      expect(said(next, given)).toBe('for-a-grown-up');
    }
  });
  it('is a slip where it is nothing, or finer than the ruler', () => {
    expect(said(next, long(0))).toBe('blank-is-zero');
    expect(said(next, many(0))).toBe('blank-is-zero');
    expect(said(next, long(9.3, 'cm', '1 mm'))).toBe('decimals');
  });
  it('of a kind of day needs the second half heard', () => {
    const kinds = order(word('sun'), word('rain'));
    const likely = asked('beyond', word('sun'), [slip('other-category', word('rain'))], { kinds });
    expect(said(likely, word('sun'))).toBe('for-a-grown-up');
    expect(said(likely, word('rain'))).toBe('other-category');
    expect(answerWayOf(likely)).toEqual({
      ...{ by: 'choice', choices: [word('sun'), word('rain')], isHeard: true },
    });
  });
  it('of days is a span, heard by a grown-up', () => {
    const leaf = asked('beyond', between(day(3), day(6)), [slip('one-exact-day')]);
    expect(said(leaf, days(3, 6))).toBe('for-a-grown-up');
    expect(said(leaf, day(4))).toBe('for-a-grown-up');
    expect(answerWayOf(leaf).by).toBe('from-to');
  });
});
