import { tick } from 'svelte';
import type { SkillId } from '#core/lessons';

export const skillCardId = (skill: SkillId): string => `skill-${skill}`;

/** Goes to the card of a skill: a note may have put it into another group of the page. */
export const focusSkill = async (skill: SkillId): Promise<void> => {
  await tick();
  document.getElementById(skillCardId(skill))?.focus();
};
