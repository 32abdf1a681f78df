package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.List;

/**
 * The trade's rules played through minute by minute for one type of battery, knowing nothing of the
 * plan: positions of one battery each, no breaks, all times whole minutes, batteries that last and
 * charge a whole number of minutes from full to empty and back, straight between. Every way of
 * choosing batteries and chargers is tried, so what is found is the fewest of all schedules.
 */
final class MinuteDay {
  /** A position: minutes from and to, and how many minutes a full battery lasts. */
  record Load(int from, int to, int lasts) {}

  /** A charger of one channel: minutes for a whole charge, minutes of power. */
  record Channel(int minutes, int powerFrom, int powerTo) {}

  private MinuteDay() {}

  /** The fewest full batteries with which no position is ever dark, by full batteries only. */
  static int fewest(List<Load> loads, List<Channel> channels) {
    int number = 1;
    while (!isLit(loads, channels, number)) {
      number++;
    }
    return number;
  }

  /**
   * Whether some schedule works with so many. A position keeps its battery until it is empty or the
   * position ends; then it takes a full one. An empty battery goes on any channel, or waits for it.
   */
  private static boolean isLit(List<Load> loads, List<Channel> channels, int number) {
    int[][] state = new int[loads.size()][];
    for (int i = 0; i < state.length; i++) {
      state[i] = new int[] {-1};
    }
    return run(0, loads, channels, state, number, new ArrayList<>(), new int[channels.size()]);
  }

  private static boolean run(
      int minute,
      List<Load> loads,
      List<Channel> channels,
      int[][] emptyAt,
      int full,
      List<Integer> back,
      int[] freeAt) {
    int end = loads.stream().mapToInt(Load::to).max().orElseThrow();
    int now = minute;
    int shelf = full;
    while (now < end) {
      for (int i = back.size() - 1; i >= 0; i--) {
        if (back.get(i) == now) {
          back.remove(i);
          shelf++;
        }
      }
      List<Integer> cameOff = new ArrayList<>();
      for (int i = 0; i < loads.size(); i++) {
        Load load = loads.get(i);
        boolean empty = emptyAt[i][0] == now && now < load.to;
        if (empty) {
          cameOff.add(load.lasts);
        }
        if (now == load.from || empty) {
          if (shelf == 0) {
            return false;
          }
          shelf--;
          emptyAt[i][0] = now + load.lasts;
        }
      }
      if (!cameOff.isEmpty()) {
        return branch(cameOff.size(), now, loads, channels, emptyAt, shelf, back, freeAt);
      }
      now++;
    }
    return true;
  }

  /** Tries every channel for each battery that came off, and to leave it aside. */
  private static boolean branch(
      int left,
      int now,
      List<Load> loads,
      List<Channel> channels,
      int[][] emptyAt,
      int shelf,
      List<Integer> back,
      int[] freeAt) {
    if (left == 0) {
      int[][] copy = new int[emptyAt.length][];
      for (int i = 0; i < copy.length; i++) {
        copy[i] = emptyAt[i].clone();
      }
      // the rest of this minute is done: go on with the next
      return run(now + 1, loads, channels, copy, shelf, new ArrayList<>(back), freeAt.clone());
    }
    for (int c = 0; c < channels.size(); c++) {
      Channel channel = channels.get(c);
      int start = Math.max(Math.max(now, freeAt[c]), channel.powerFrom);
      int done = start + channel.minutes;
      if (done <= channel.powerTo) {
        int before = freeAt[c];
        freeAt[c] = done;
        List<Integer> more = new ArrayList<>(back);
        more.add(done);
        boolean lit = branch(left - 1, now, loads, channels, emptyAt, shelf, more, freeAt);
        freeAt[c] = before;
        if (lit) {
          return true;
        }
      }
    }
    return branch(left - 1, now, loads, channels, emptyAt, shelf, back, freeAt);
  }
}
