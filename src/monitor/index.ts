export { checkMonitor } from './check-monitor.js';
export { explainAlarm } from './explain-alarm.js';
export type { Monitor, MonitorDisplay, MonitorLimit, MonitorRise, SeriesResistance } from './monitor.js';
export {
  type AlarmReason,
  type MonitorAlarm,
  type MonitorState,
  type MonitorStates,
  type MonitorStatesOptions,
  monitorStates,
} from './monitor-states.js';
export type { ResistanceTrace, SampledTrace, StepTrace, TimedTrace, TracedResistance } from './trace.js';
