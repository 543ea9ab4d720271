import { eventLogContract } from './event-log.contract.ts';
import { memoryLog } from './memory-log.ts';

eventLogContract('memory', memoryLog);
