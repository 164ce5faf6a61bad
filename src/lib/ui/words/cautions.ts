import type { Caution } from '#core/lessons';

/**
 * What a grown-up is told, and when. Each sentence is plain, says what to do, and is followed on
 * screen by `localAdvice`. Sources of each caution are named beside it.
 */
export const cautionWords: Readonly<Record<Caution, string>> = {
  // Eye specialists' reports: seconds can injure, and the injury does not hurt at first.
  sun: 'Never look at the sun, not even for a second and not through sunglasses. Look at the shadow.',
  // US National Weather Service.
  thunder:
    'When you hear thunder, go indoors, and stay in until 30 minutes after the last of it. Skip the reading: a blank is fine.',
  // US Food and Drug Administration, Bad Bug Book.
  beans:
    'Dry or raw beans are for planting, not for eating: a few raw kidney beans can make a person very ill. With small children about, sow a pea instead.',
  // US National Pesticide Information Center.
  'treated-seed': 'Brightly dyed seed is coated with pesticide. Buy untreated seed for children.',
  // US Consumer Product Safety Commission, 16 CFR 1501.
  'small-parts':
    'Keep seeds and counters away from children under three, and out of mouths, noses and ears.',
  // Hand washing after soil: extension and public health advice (from memory).
  soil: 'Wash hands after touching soil and seeds. Cover cuts. Throw mouldy paper towels out without sniffing them.',
  allergy:
    'Ask first about allergy and asthma: beans, peas, wheat, pollen, latex, mould. Choose another seed if there is any doubt.',
  'unknown-plants': 'Do not taste leaves or raw shoots: those of many kitchen plants are not food.',
  glass: 'Use clear plastic, not glass jars.',
  'sharp-tools': 'A grown-up does the cutting and drilling. Sticks are blunt, or taller than eyes.',
  // Caring for Our Children 6.3.5.2; US Centers for Disease Control and Prevention.
  water:
    'Empty buckets and tubs at once: a young child can drown in very little water. Tip the gauge out at least once a week.',
  outdoors:
    'Out of doors: hat and water, shade, the agreed place, and a look for ticks afterwards.',
};
