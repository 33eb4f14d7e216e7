#include <QtCore/QIODevice>
#include <QtMultimedia/QAudioDevice>
#include <QtMultimedia/QAudioFormat>
#include <QtMultimedia/QAudioSink>
#include <QtMultimedia/QMediaDevices>
#include <algorithm>
#include <cstring>
#include <mutex>

#include "platform/sound.h"

namespace newel::platform {
namespace {

constexpr int kRate = 48000;

// What the open sink reads from, perhaps on its own thread: the present tone, then silence without end, so
// that the device stays warm between cues.
class Source : public QIODevice {
 public:
  // Unbuffered: a buffer in between holds a sixth of a second of silence that comes before every tone.
  Source() { open(QIODevice::ReadOnly | QIODevice::Unbuffered); }
  void play(const std::vector<std::int16_t>* samples) {
    const std::lock_guard<std::mutex> lock(m_mutex);
    m_samples = samples;
    m_next = 0;
  }
  bool isSequential() const override { return true; }
  qint64 bytesAvailable() const override { return kRate; }

 protected:
  qint64 readData(char* data, qint64 size) override {
    const std::lock_guard<std::mutex> lock(m_mutex);
    std::memset(data, 0, static_cast<std::size_t>(size));
    if (m_samples == nullptr) return size;
    const std::size_t wanted = static_cast<std::size_t>(size) / sizeof(std::int16_t);
    const std::size_t given = std::min(wanted, m_samples->size() - m_next);
    std::memcpy(data, m_samples->data() + m_next, given * sizeof(std::int16_t));
    m_next += given;
    if (m_next == m_samples->size()) m_samples = nullptr;
    return size;
  }
  qint64 writeData(const char*, qint64) override { return -1; }

 private:
  std::mutex m_mutex;
  const std::vector<std::int16_t>* m_samples = nullptr;
  std::size_t m_next = 0;
};

class QtTones : public Tones {
 public:
  ~QtTones() override { QtTones::warm(false); }

  std::string whyNot() const override {
    return m_broken || QMediaDevices::defaultAudioOutput().isNull() ? "sound.no-device" : "";
  }

  void warm(bool on) override {
    // A device that is gone swallows everything: what comes next goes to the one in use now.
    if (on && m_sink != nullptr && m_device_id != QMediaDevices::defaultAudioOutput().id()) {
      m_sink->stop();
      m_sink.reset();
    }
    if (on == (m_sink != nullptr)) return;
    if (!on) {
      m_sink->stop();
      m_sink.reset();
      return;
    }
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull()) return;
    if (m_samples[0].empty()) {
      for (const Tone tone : kAllTones) m_samples[static_cast<std::size_t>(tone)] = samplesOf(tone, kRate);
    }
    QAudioFormat format;
    format.setSampleRate(kRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    m_device_id = device.id();
    m_sink = std::make_unique<QAudioSink>(device, format);
    // A cue may come no later than 80 ms after its picture. Under 60 ms Qt's PulseAudio backend, which writes
    // 20 ms at a time, never fills what the server waits for before it begins: nothing is heard, and nothing
    // says so.
    m_sink->setBufferSize(kRate * 2 * 60 / 1000);
    m_sink->start(&m_source);
    m_broken = m_sink->error() == QAudio::OpenError;
    if (m_broken) m_sink.reset();
  }

  void play(Tone tone) override {
    warm(true);
    if (m_sink != nullptr) m_source.play(&m_samples[static_cast<std::size_t>(tone)]);
  }

 private:
  std::vector<std::int16_t> m_samples[std::size(kAllTones)];
  Source m_source;
  std::unique_ptr<QAudioSink> m_sink;
  QByteArray m_device_id;
  bool m_broken = false;
};

}  // namespace

std::unique_ptr<Tones> makeTones() { return std::make_unique<QtTones>(); }

}  // namespace newel::platform
