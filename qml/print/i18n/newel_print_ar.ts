<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar">
<context>
    <name>Card</name>
    <message>
        <source>knee: %1</source>
        <translation>الركبة: %1</translation>
    </message>
    <message>
        <source>foot: %1</source>
        <translation>القدم: %1</translation>
    </message>
    <message>
        <source>no prosthesis</source>
        <translation>بلا طرف صناعي</translation>
    </message>
    <message>
        <source>I live with limb loss.</source>
        <translation>أعيش مع فقدان طرف.</translation>
    </message>
    <message>
        <source>Mind:</source>
        <translation>انتبه:</translation>
    </message>
    <message>
        <source>Emergency:</source>
        <translation>الطوارئ:</translation>
    </message>
    <message>
        <source>After a fall</source>
        <translation>بعد السقوط</translation>
    </message>
    <message>
        <source>Stay still. Look for pain. Hurt, or a knock on the head: call for help. Look at the prosthesis and the skin before you stand on it.</source>
        <translation>ابقَ ساكنًا. ابحث عن الألم. إذا أُصبت أو ضُرب رأسك فاطلب المساعدة. افحص الطرف الصناعي والجلد قبل أن تقف عليه.</translation>
    </message>
    <message>
        <source>Leave the prosthesis off and call the clinic</source>
        <translation>اترك الطرف الصناعي مخلوعًا واتصل بالعيادة</translation>
    </message>
    <message>
        <source>if the skin is open, blistered or bruised, pain rises, the limb swells, is cold, numb or changes colour, or you have a fever.</source>
        <translation>إذا كان في الجلد جرح أو فقاعة أو كدمة، أو زاد الألم، أو تورّم الطرف المتبقّي أو برد أو خدر أو تغيّر لونه، أو كانت عندك حمّى.</translation>
    </message>
    <message>
        <source>Stop an exercise</source>
        <translation>أوقف التمرين</translation>
    </message>
    <message>
        <source>if pain passes %1 of 10 or rises by %2 or more, or you feel dizzy or unsteady.</source>
        <translation>إذا تجاوز الألم %1 من 10 أو زاد بمقدار %2 أو أكثر، أو شعرت بالدوار أو بعدم الثبات.</translation>
    </message>
    <message>
        <source>Chest pain, a faint, bad breathlessness, sudden weakness or trouble with speech: call %1 at once.</source>
        <translation>ألم في الصدر أو إغماء أو ضيق نفس شديد أو ضعف مفاجئ أو صعوبة في الكلام: اتصل بالرقم %1 فورًا.</translation>
    </message>
    <message>
        <source>Card for the wallet</source>
        <translation>بطاقة للمحفظة</translation>
    </message>
    <message>
        <source>It does not replace what your clinic told you.</source>
        <translation>لا تغني عمّا قالته لك عيادتك.</translation>
    </message>
    <message>
        <source>Cut along the line, fold along the dashes, keep it with you.</source>
        <translation>قصّ على الخط، واطوِ على الخط المتقطّع، واحملها معك.</translation>
    </message>
</context>
<context>
    <name>Handout</name>
    <message>
        <source>%1 s</source>
        <translation>%1 ث</translation>
    </message>
    <message>
        <source>%1 out, %2 back</source>
        <translation>%1 ذهابًا، %2 رجوعًا</translation>
    </message>
    <message>
        <source>%1 a step</source>
        <translation>%1 لكل خطوة</translation>
    </message>
    <message>
        <source> Hold %1 s.</source>
        <translation> اثبت %1 ث.</translation>
    </message>
    <message>
        <source>A photo from your therapist is on your phone, with your programme.</source>
        <translation>توجد صورة من معالجك على هاتفك مع برنامجك.</translation>
    </message>
    <message>
        <source>A clip from your therapist is on your phone, with your programme.</source>
        <translation>يوجد مقطع من معالجك على هاتفك مع برنامجك.</translation>
    </message>
    <message>
        <source>A photo and a clip from your therapist are on your phone, with your programme.</source>
        <translation>توجد صورة ومقطع من معالجك على هاتفك مع برنامجك.</translation>
    </message>
    <message>
        <source>This exercise is not in your language yet. Ask your therapist to read it with you.</source>
        <translation>هذا التمرين ليس بلغتك بعد. اطلب من معالجك أن يقرأه معك.</translation>
    </message>
    <message>
        <source>From your therapist:</source>
        <translation>من معالجك:</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>انتبه</translation>
    </message>
    <message>
        <source>Stop this exercise if</source>
        <translation>أوقف هذا التمرين إذا</translation>
    </message>
    <message>
        <source>How to do it</source>
        <translation>كيف تفعله</translation>
    </message>
    <message>
        <source>What good looks like</source>
        <translation>كيف يبدو الأداء الجيّد</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>كم</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>السرعة</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>الوقت</translation>
    </message>
    <message numerus="yes">
        <source>about %n minute(s)</source>
        <translation>
            <numerusform>أقل من دقيقة</numerusform>
            <numerusform>نحو دقيقة واحدة</numerusform>
            <numerusform>نحو دقيقتين</numerusform>
            <numerusform>نحو %n دقائق</numerusform>
            <numerusform>نحو %n دقيقة</numerusform>
            <numerusform>نحو %n دقيقة</numerusform>
        </translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>الجانبان</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>اليدان</translation>
    </message>
    <message>
        <source>Prosthesis</source>
        <translation>الطرف الصناعي</translation>
    </message>
    <message>
        <source>off</source>
        <translation>مخلوع</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ملبوس</translation>
    </message>
    <message>
        <source>Pain passes %1 of 10, or rises by %2 or more.</source>
        <translation>تجاوز الألم %1 من 10، أو زاد بمقدار %2 أو أكثر.</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>ما تفعله</translation>
    </message>
    <message>
        <source>Whom to phone</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <source>Whom to call:</source>
        <translation>بمن تتصل:</translation>
    </message>
    <message>
        <source>In an emergency:</source>
        <translation>في الطوارئ:</translation>
    </message>
    <message>
        <source>Home programme</source>
        <translation>برنامج المنزل</translation>
    </message>
    <message>
        <source>Home programme for %1</source>
        <translation>برنامج المنزل: %1</translation>
    </message>
    <message>
        <source>Limb loss</source>
        <translation>فقدان الطرف</translation>
    </message>
    <message>
        <source>Programme</source>
        <translation>البرنامج</translation>
    </message>
    <message>
        <source>number %1, from %2 to %3</source>
        <translation>رقم %1، من %2 إلى %3</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>وقّعه</translation>
    </message>
    <message>
        <source>What is new</source>
        <translation>الجديد</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>نصائح</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>قبل أن تبدأ</translation>
    </message>
    <message>
        <source>Home programme %1</source>
        <translation>برنامج المنزل %1</translation>
    </message>
    <message>
        <source>Stop if something feels wrong. Clinic %1. Emergency %2.</source>
        <translation>توقّف إذا شعرت بشيء غير سليم. العيادة %1. الطوارئ %2.</translation>
    </message>
    <message>
        <source>Tick what you did</source>
        <translation>ضع علامة على ما فعلته</translation>
    </message>
    <message>
        <source>One box for each time. A day left out is not made up for later.</source>
        <translation>مربّع لكل مرة. اليوم الذي فات لا يُعوَّض لاحقًا.</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>صفحة %1 من %2</translation>
    </message>
</context>
<context>
    <name>RecordWords</name>
    <message>
        <source>%1 s</source>
        <translation>%1 ث</translation>
    </message>
    <message>
        <source>1 time</source>
        <translation>مرة واحدة</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1 مرات</translation>
    </message>
    <message>
        <source>1 set of %1</source>
        <translation>مجموعة واحدة من %1</translation>
    </message>
    <message>
        <source>%1 sets of %2</source>
        <translation>%1 مجموعات من %2</translation>
    </message>
    <message>
        <source>, hold %1</source>
        <translation>، اثبت %1</translation>
    </message>
    <message>
        <source>%1 up and down, %2 steps</source>
        <translation>%1 صعودًا ونزولًا، %2 درجات</translation>
    </message>
    <message>
        <source>%1 there and back, %2 m</source>
        <translation>%1 ذهابًا وإيابًا، %2 م</translation>
    </message>
    <message>
        <source>1 minute</source>
        <translation>دقيقة واحدة</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 دقائق</translation>
    </message>
    <message>
        <source>%1 times %2</source>
        <translation>%1 مرات %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> و </translation>
    </message>
    <message>
        <source>no dose</source>
        <translation>بلا جرعة</translation>
    </message>
    <message>
        <source>%1 out, %2 back</source>
        <translation>%1 ذهابًا، %2 رجوعًا</translation>
    </message>
    <message>
        <source>%1 between</source>
        <translation>%1 بينها</translation>
    </message>
    <message>
        <source>rest %1 between sets</source>
        <translation>راحة %1 بين المجموعات</translation>
    </message>
    <message>
        <source>rest %1 between</source>
        <translation>راحة %1 بينها</translation>
    </message>
    <message>
        <source>%1 a step</source>
        <translation>%1 لكل خطوة</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 إلى %2</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>كل يوم</translation>
    </message>
    <message>
        <source>no days</source>
        <translation>بلا أيام</translation>
    </message>
    <message>
        <source>Stop if pain passes %1 of 10, or rises by %2 or more.</source>
        <translation>توقّف إذا تجاوز الألم %1 من 10، أو زاد بمقدار %2 أو أكثر.</translation>
    </message>
    <message>
        <source>%1 held</source>
        <translation>ثبات %1</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 س %2 د</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>الآن</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 د</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 س</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>يوم واحد</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 أيام</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>لا شيء مطلوب</translation>
    </message>
    <message>
        <source>Adherence is the number of occasions done out of the occasions due. An occasion is one exercise on one day and time of day. Part of the dose counts as done; the dose is shown apart. Excused days (a pause, a hold order), days to come and days with no data count in neither number. Extra practice in one week repairs no other week.</source>
        <translation>الالتزام هو عدد المرات التي تمّت من المرات المطلوبة. المرة هي تمرين واحد في يوم ووقت من اليوم. جزء من الجرعة يُحسب أنه تمّ، وتُعرض الجرعة وحدها. الأيام المعذورة (توقّف أو أمر إيقاف) والأيام القادمة والأيام بلا بيانات لا تُحسب في أيّ من العددين. التدريب الزائد في أسبوع لا يعوّض أسبوعًا آخر.</translation>
    </message>
    <message>
        <source>This programme is for you alone. Your therapist examined you, taught you these exercises and signed it.</source>
        <translation>هذا البرنامج لك وحدك. فحصك معالجك وعلّمك هذه التمارين ووقّعه.</translation>
    </message>
    <message>
        <source>Stop if something feels wrong, and follow your therapist over this sheet.</source>
        <translation>توقّف إذا شعرت بشيء غير سليم، واتبع معالجك قبل هذه الورقة.</translation>
    </message>
    <message>
        <source>This is not an emergency service. In an emergency call the local emergency number.</source>
        <translation>هذه ليست خدمة طوارئ. في الطوارئ اتصل برقم الطوارئ المحلي.</translation>
    </message>
    <message>
        <source>Nobody at the clinic reads messages at once. If you are worried, phone.</source>
        <translation>لا أحد في العيادة يقرأ الرسائل فورًا. إذا كنت قلقًا فاتصل.</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>غير مذكور</translation>
    </message>
    <message>
        <source>left</source>
        <translation>اليسرى</translation>
    </message>
    <message>
        <source>right</source>
        <translation>اليمنى</translation>
    </message>
    <message>
        <source>partial foot</source>
        <translation>جزء من القدم</translation>
    </message>
    <message>
        <source>ankle disarticulation</source>
        <translation>فصل مفصل الكاحل</translation>
    </message>
    <message>
        <source>transtibial</source>
        <translation>تحت الركبة</translation>
    </message>
    <message>
        <source>knee disarticulation</source>
        <translation>فصل مفصل الركبة</translation>
    </message>
    <message>
        <source>transfemoral</source>
        <translation>فوق الركبة</translation>
    </message>
    <message>
        <source>hip disarticulation</source>
        <translation>فصل مفصل الورك</translation>
    </message>
    <message>
        <source>own knee</source>
        <translation>ركبتي الطبيعية</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>مقفلة</translation>
    </message>
    <message>
        <source>swings freely</source>
        <translation>تتأرجح بحرّية</translation>
    </message>
    <message>
        <source>yields under load</source>
        <translation>تلين تحت الحمل</translation>
    </message>
    <message>
        <source>no prosthesis</source>
        <translation>بلا طرف صناعي</translation>
    </message>
    <message>
        <source>fixed ankle</source>
        <translation>كاحل ثابت</translation>
    </message>
    <message>
        <source>moving ankle</source>
        <translation>كاحل متحرّك</translation>
    </message>
    <message>
        <source>energy storing</source>
        <translation>تخزّن الطاقة</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>غير معروف</translation>
    </message>
    <message>
        <source>diabetes</source>
        <translation>السكّري</translation>
    </message>
    <message>
        <source>takes insulin</source>
        <translation>يستعمل الإنسولين</translation>
    </message>
    <message>
        <source>heart disease</source>
        <translation>مرض القلب</translation>
    </message>
    <message>
        <source>breathing problem</source>
        <translation>مشكلة في التنفّس</translation>
    </message>
    <message>
        <source>high blood pressure</source>
        <translation>ضغط دم مرتفع</translation>
    </message>
    <message>
        <source>vascular disease</source>
        <translation>مرض الأوعية الدموية</translation>
    </message>
    <message>
        <source>osteoporosis</source>
        <translation>هشاشة العظام</translation>
    </message>
    <message>
        <source>seizures</source>
        <translation>نوبات تشنّج</translation>
    </message>
    <message>
        <source>back pain</source>
        <translation>ألم الظهر</translation>
    </message>
    <message>
        <source>hernia</source>
        <translation>فتق</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>حمل</translation>
    </message>
    <message>
        <source>recent surgery</source>
        <translation>جراحة حديثة</translation>
    </message>
    <message>
        <source>open wound</source>
        <translation>جرح مفتوح</translation>
    </message>
    <message>
        <source>cannot lie face down</source>
        <translation>لا يستطيع الاستلقاء على الوجه</translation>
    </message>
    <message>
        <source>shoulder problem</source>
        <translation>مشكلة في الكتف</translation>
    </message>
    <message>
        <source>neuropathy</source>
        <translation>اعتلال الأعصاب</translation>
    </message>
    <message>
        <source>blood thinners</source>
        <translation>مميّعات الدم</translation>
    </message>
    <message>
        <source>hip flexion contracture</source>
        <translation>تقفّع انثناء الورك</translation>
    </message>
    <message>
        <source>knee flexion contracture</source>
        <translation>تقفّع انثناء الركبة</translation>
    </message>
    <message>
        <source>sound knee pain</source>
        <translation>ألم الركبة السليمة</translation>
    </message>
    <message>
        <source>blood clot in the last four weeks</source>
        <translation>جلطة دم في الأسابيع الأربعة الأخيرة</translation>
    </message>
    <message>
        <source>none</source>
        <translation>لا شيء</translation>
    </message>
    <message>
        <source>one cane</source>
        <translation>عصا واحدة</translation>
    </message>
    <message>
        <source>two canes</source>
        <translation>عصوان</translation>
    </message>
    <message>
        <source>crutches</source>
        <translation>عكّازان</translation>
    </message>
    <message>
        <source>walker</source>
        <translation>مشّاية</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>نعم</translation>
    </message>
    <message>
        <source>no</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>no stairs</source>
        <translation>لا درج</translation>
    </message>
    <message>
        <source>stairs, no rail</source>
        <translation>درج بلا درابزين</translation>
    </message>
    <message>
        <source>rail on the left going up</source>
        <translation>درابزين على اليسار عند الصعود</translation>
    </message>
    <message>
        <source>rail on the right going up</source>
        <translation>درابزين على اليمين عند الصعود</translation>
    </message>
    <message>
        <source>rails on both sides</source>
        <translation>درابزين على الجانبين</translation>
    </message>
    <message>
        <source>both hands</source>
        <translation>اليدان</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>يد واحدة</translation>
    </message>
    <message>
        <source>fingertips</source>
        <translation>أطراف الأصابع</translation>
    </message>
    <message>
        <source>no hands</source>
        <translation>بلا يدين</translation>
    </message>
    <message>
        <source>lying</source>
        <translation>مستلقيًا</translation>
    </message>
    <message>
        <source>seated</source>
        <translation>جالسًا</translation>
    </message>
    <message>
        <source>prosthesis on</source>
        <translation>الطرف الصناعي ملبوس</translation>
    </message>
    <message>
        <source>prosthesis off</source>
        <translation>الطرف الصناعي مخلوع</translation>
    </message>
    <message>
        <source>whole body</source>
        <translation>الجسم كله</translation>
    </message>
    <message>
        <source>sides in turn</source>
        <translation>الجانبان بالتناوب</translation>
    </message>
    <message>
        <source>one side, then the other</source>
        <translation>جانب ثم الآخر</translation>
    </message>
    <message>
        <source>prosthesis side</source>
        <translation>جانب الطرف الصناعي</translation>
    </message>
    <message>
        <source>sound side</source>
        <translation>الجانب السليم</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>الجانب الأيسر</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>الجانب الأيمن</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>الاثنين</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>الثلاثاء</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>الأربعاء</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>الخميس</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>الجمعة</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>السبت</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>الأحد</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>الاثنين</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>الثلاثاء</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>الأربعاء</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>الخميس</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>الجمعة</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>السبت</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>الأحد</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>ألم</translation>
    </message>
    <message>
        <source>dizzy</source>
        <translation>دوار</translation>
    </message>
    <message>
        <source>unsteady</source>
        <translation>عدم ثبات</translation>
    </message>
    <message>
        <source>trouble with the prosthesis</source>
        <translation>مشكلة في الطرف الصناعي</translation>
    </message>
    <message>
        <source>tired</source>
        <translation>تعب</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>انقطع</translation>
    </message>
    <message>
        <source>chest pain</source>
        <translation>ألم في الصدر</translation>
    </message>
    <message>
        <source>breathless</source>
        <translation>ضيق نفس</translation>
    </message>
    <message>
        <source>a fall</source>
        <translation>سقوط</translation>
    </message>
    <message>
        <source>skin</source>
        <translation>الجلد</translation>
    </message>
    <message>
        <source>hold order</source>
        <translation>أمر إيقاف</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>سبب آخر</translation>
    </message>
    <message>
        <source>sudden weakness or trouble with speech</source>
        <translation>ضعف مفاجئ أو صعوبة في الكلام</translation>
    </message>
    <message>
        <source>swelling of a leg</source>
        <translation>تورّم ساق</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>لا وقت</translation>
    </message>
    <message>
        <source>felt unwell</source>
        <translation>شعر بتوعّك</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>اكتمل</translation>
    </message>
    <message>
        <source>stopped by the person</source>
        <translation>أوقفه الشخص</translation>
    </message>
    <message>
        <source>ended by a safety rule</source>
        <translation>أنهته قاعدة سلامة</translation>
    </message>
    <message>
        <source>ended by a hold order</source>
        <translation>أنهاه أمر إيقاف</translation>
    </message>
    <message>
        <source>interrupted and not taken up again</source>
        <translation>انقطع ولم يُستأنف</translation>
    </message>
    <message>
        <source>not begun: the ready check said not today</source>
        <translation>لم يبدأ: فحص الاستعداد قال ليس اليوم</translation>
    </message>
    <message>
        <source>the phone&apos;s clock was set during it</source>
        <translation>ضُبطت ساعة الهاتف في أثنائه</translation>
    </message>
    <message>
        <source>the time zone changed during it</source>
        <translation>تغيّرت المنطقة الزمنية في أثنائه</translation>
    </message>
    <message>
        <source>the phone or program restarted during it</source>
        <translation>أُعيد تشغيل الهاتف أو البرنامج في أثنائه</translation>
    </message>
    <message>
        <source>the phone&apos;s date was behind the clinic&apos;s</source>
        <translation>تاريخ الهاتف متأخّر عن تاريخ العيادة</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>منع</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>سؤال</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>تنبيه</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>ملاحظة</translation>
    </message>
    <message>
        <source>Red flag</source>
        <translation>علامة خطر</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>ليس اليوم</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>تُرك</translation>
    </message>
    <message>
        <source>Ended the exercise</source>
        <translation>أنهى التمرين</translation>
    </message>
    <message>
        <source>Told the clinic</source>
        <translation>أخبر العيادة</translation>
    </message>
    <message>
        <source>done</source>
        <translation>تمّ</translation>
    </message>
    <message>
        <source>part done</source>
        <translation>تمّ جزء</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>لم يتمّ</translation>
    </message>
    <message>
        <source>excused</source>
        <translation>معذور</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>قادم</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>لا بيانات</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) a week</source>
        <translation>
            <numerusform>ولا مرة في الأسبوع</numerusform>
            <numerusform>مرة في الأسبوع</numerusform>
            <numerusform>مرتان في الأسبوع</numerusform>
            <numerusform>%n مرات في الأسبوع</numerusform>
            <numerusform>%n مرة في الأسبوع</numerusform>
            <numerusform>%n مرة في الأسبوع</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>، </translation>
    </message>
</context>
<context>
    <name>TickGrid</name>
    <message>
        <source>Week of %1</source>
        <translation>أسبوع %1</translation>
    </message>
    <message numerus="yes">
        <source>any %n day(s)</source>
        <translation>
            <numerusform>بلا يوم</numerusform>
            <numerusform>أيّ يوم</numerusform>
            <numerusform>أيّ يومين</numerusform>
            <numerusform>أيّ %n أيام</numerusform>
            <numerusform>أيّ %n يومًا</numerusform>
            <numerusform>أيّ %n يوم</numerusform>
        </translation>
    </message>
</context>
</TS>
