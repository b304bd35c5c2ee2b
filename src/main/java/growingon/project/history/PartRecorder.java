package growingon.project.history;

/**
 * A recorder that takes down in parts, so that what several lots were told can be put in order
 * again, and of which a lot that goes on apart from a run takes one with it.
 */
public interface PartRecorder extends Recorder {
  /** What was told since the last part, be it nothing, is a part. */
  void partOver();

  /** One that was told the same so far, and is told on apart. */
  PartRecorder goingApart();
}
