/** For fields that stand beside one another: hints below, so that what is typed into stands on one line. */
export const HINT_BELOW = {
  inputWrapperOrder: ['label', 'input', 'description', 'error'] as (
    | 'label'
    | 'input'
    | 'description'
    | 'error'
  )[],
};
