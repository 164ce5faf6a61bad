import { formatExact } from '#core/measure';
import type { StartAtOne } from '#core/series';

/** What the pairs say of where counting begins. For the grown-up; nothing is corrected by it. */
export function startAtOneWords(signal: StartAtOne, name: string | null): string {
  const whose = name === null ? 'The pairs' : `${name}: the pairs`;
  switch (signal.kind) {
    case 'too-few':
      return `${whose} can tell after ${signal.need} of them whether counting begins at 0. There are ${signal.have}.`;
    case 'fine':
      return `${whose} fit together: counting seems to begin at 0 on both sides.`;
    case 'counted-from-one':
      return `${whose} of late are ${formatExact(-signal.meanExact, 'cm', '1 mm')} short on the centimetre side, on average. That is what comes out when counting begins at 1 on both sides. It is a reason for a lesson, and not for changing any number.`;
  }
}

export const startAtOneLesson = 'The lesson about counting spaces';
