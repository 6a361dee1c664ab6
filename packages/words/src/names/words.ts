import type { Bite, NoticeLevel, PitType, RulesProfile, StageKind } from '@pitwright/model';

const BITE_NAMES: Readonly<Record<Bite, string>> = {
  raw: 'raw',
  firm: 'firm',
  'clean-bite': 'clean bite',
  tender: 'tender',
  'falls-off': 'falls off',
  'pulls-apart': 'pulls apart',
};
export const biteName = (bite: Bite): string => BITE_NAMES[bite];

const STAGE_NAMES: Readonly<Record<StageKind, string>> = {
  bare: 'bare',
  foil: 'in foil',
  paper: 'in paper',
  glazed: 'glazed',
  rest: 'rest',
  hold: 'hold',
  chill: 'chill',
};
/** @param isOverCoals one side of the piece sees them */
export const stageName = (kind: StageKind, isOverCoals = false): string =>
  isOverCoals && kind === 'bare'
    ? 'over the coals'
    : `${STAGE_NAMES[kind]}${isOverCoals ? ', over the coals' : ''}`;

const PIT_NAMES: Readonly<Record<PitType, string>> = {
  offset: 'offset',
  kettle: 'kettle',
  drum: 'drum',
  bullet: 'bullet',
  ceramic: 'ceramic',
  pellet: 'pellet pit',
  cabinet: 'cabinet',
  gas: 'gas pit',
  electric: 'electric pit',
  oven: 'oven',
  unknown: 'pit of unknown kind',
};
export const pitName = (type: PitType): string => PIT_NAMES[type];

const RULE_NAMES: Readonly<Record<RulesProfile, string>> = {
  'home-us': 'US home advice',
  'cater-us': 'US catering code',
  uk: 'UK advice',
};
export const rulesName = (rules: RulesProfile): string => RULE_NAMES[rules];

const LEVEL_NAMES: Readonly<Record<NoticeLevel, string>> = {
  information: 'Information',
  caution: 'Caution',
  stop: 'Stop',
};
export const levelName = (level: NoticeLevel): string => LEVEL_NAMES[level];
