<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar">
<context>
    <name>AboutPage</name>
    <message>
        <source>What Newel is, and is not</source>
        <translation>ما هو نيويل وما ليس هو</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
</context>
<context>
    <name>AdvicePage</name>
    <message>
        <source>This card is not in your language yet.</source>
        <translation>هذه البطاقة ليست بلغتك بعد.</translation>
    </message>
    <message>
        <source>From your therapist: %1</source>
        <translation>من معالجك: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>ماذا تفعل</translation>
    </message>
    <message>
        <source>Whom to phone</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <source>Write it down for the clinic</source>
        <translation>اكتبه للعيادة</translation>
    </message>
</context>
<context>
    <name>AskRemindersPage</name>
    <message>
        <source>May the phone remind you?</source>
        <translation>هل يذكّرك الهاتف؟</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
    <message>
        <source>Practice is easily forgotten. The phone can show a short note when something is due. The note says nothing about your body or your exercises.</source>
        <translation>من السهل نسيان التمرين. يستطيع الهاتف أن يعرض تنبيهًا قصيرًا حين يحين شيء. لا يذكر التنبيه شيئًا عن جسمك أو تمارينك.</translation>
    </message>
    <message>
        <source>You can put a note off, or turn them all off in Settings.</source>
        <translation>يمكنك تأجيل التنبيه، أو إيقاف التنبيهات كلها في الإعدادات.</translation>
    </message>
    <message>
        <source>Yes, remind me</source>
        <translation>نعم، ذكّرني</translation>
    </message>
    <message>
        <source>No reminders</source>
        <translation>بلا تنبيهات</translation>
    </message>
</context>
<context>
    <name>CallsPage</name>
    <message>
        <source>Whom to call</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <source>These numbers stand under Help. Newel itself calls nobody.</source>
        <translation>هذه الأرقام موجودة في المساعدة. نيويل نفسه لا يتصل بأحد.</translation>
    </message>
</context>
<context>
    <name>ClipView</name>
    <message>
        <source>Stop the clip</source>
        <translation>أوقف المقطع</translation>
    </message>
    <message>
        <source>Play the clip</source>
        <translation>شغّل المقطع</translation>
    </message>
    <message>
        <source>This device cannot play the clip. What it shows is written here.</source>
        <translation>لا يستطيع هذا الجهاز تشغيل المقطع. ما يظهر فيه مكتوب هنا.</translation>
    </message>
    <message>
        <source>The clip shows: %1</source>
        <translation>يظهر في المقطع: %1</translation>
    </message>
    <message>
        <source>What is said: %1</source>
        <translation>ما يُقال فيه: %1</translation>
    </message>
</context>
<context>
    <name>ClosePage</name>
    <message>
        <source>What the clinic gets</source>
        <translation>ما يصل إلى العيادة</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>العودة إلى اليوم</translation>
    </message>
    <message>
        <source>The clinic has it</source>
        <translation>وصل إلى العيادة</translation>
    </message>
    <message>
        <source>That is what you did of each exercise, your answers before it, and your numbers for pain and effort.</source>
        <translation>أي ما أدّيته من كل تمرين، وإجاباتك قبله، وأرقامك للألم والجهد.</translation>
    </message>
</context>
<context>
    <name>ContactNotices</name>
    <message>
        <source>Practise as usual: what you do is kept on this phone and sent later. But news from your therapist does not reach you. See that the phone is online. If it is, call the clinic.</source>
        <translation>تمرّن كالمعتاد: ما تفعله يُحفظ على هذا الهاتف ويُرسل لاحقًا. لكن أخبار معالجك لا تصلك. تأكد أن الهاتف متصل بالإنترنت. فإن كان متصلًا فاتصل بالعيادة.</translation>
    </message>
    <message>
        <source>No contact with the clinic yet</source>
        <translation>لا تواصل مع العيادة بعد</translation>
    </message>
    <message>
        <source>No contact with the clinic since %1</source>
        <translation>لا تواصل مع العيادة منذ %1</translation>
    </message>
    <message>
        <source>The clinic ended this phone&apos;s access</source>
        <translation>أنهت العيادة صلاحية هذا الهاتف</translation>
    </message>
    <message>
        <source>You cannot practise with it now, and nothing new comes from the clinic. What you did is kept on this phone. Call the clinic: with a new code the phone works again.</source>
        <translation>لا يمكنك التمرّن به الآن، ولا يصل جديد من العيادة. ما فعلته محفوظ على هذا الهاتف. اتصل بالعيادة: برمز جديد يعمل الهاتف من جديد.</translation>
    </message>
    <message>
        <source>The date on this phone seems wrong</source>
        <translation>يبدو التاريخ على هذا الهاتف خاطئًا</translation>
    </message>
    <message>
        <source>So the phone cannot tell what is due, nor reach the clinic. Set date and time in the phone&apos;s own settings.</source>
        <translation>لذلك لا يعرف الهاتف ما حان موعده ولا يصل إلى العيادة. اضبط التاريخ والوقت في إعدادات الهاتف نفسه.</translation>
    </message>
    <message>
        <source>This phone&apos;s memory is full</source>
        <translation>ذاكرة هذا الهاتف ممتلئة</translation>
    </message>
    <message>
        <source>What you do cannot be kept, so you cannot practise with it now. Remove photos or programs that you do not need.</source>
        <translation>لا يمكن حفظ ما تفعله، لذلك لا يمكنك التمرّن به الآن. احذف صورًا أو برامج لا تحتاجها.</translation>
    </message>
    <message>
        <source>The clinic&apos;s computer gave an answer that is not right</source>
        <translation>أجاب حاسوب العيادة إجابة غير صحيحة</translation>
    </message>
    <message>
        <source>Practise as usual: what you do is kept on this phone. Call the clinic, so that someone looks into it. A new code may help.</source>
        <translation>تمرّن كالمعتاد: ما تفعله يُحفظ على هذا الهاتف. اتصل بالعيادة لينظر أحد في الأمر. قد يفيد رمز جديد.</translation>
    </message>
</context>
<context>
    <name>CourseExtras</name>
    <message numerus="yes">
        <source>Worn on %Ln day(s), at most %1 in a day.</source>
        <translation>
            <numerusform>لم يُلبس في أي يوم، بحدّ أقصى %1 في اليوم.</numerusform>
            <numerusform>لُبس في يوم واحد، بحدّ أقصى %1 في اليوم.</numerusform>
            <numerusform>لُبس في يومين، بحدّ أقصى %1 في اليوم.</numerusform>
            <numerusform>لُبس في %Ln أيام، بحدّ أقصى %1 في اليوم.</numerusform>
            <numerusform>لُبس في %Ln يومًا، بحدّ أقصى %1 في اليوم.</numerusform>
            <numerusform>لُبس في %Ln يوم، بحدّ أقصى %1 في اليوم.</numerusform>
        </translation>
    </message>
    <message>
        <source>The skin was hurt: %L1.</source>
        <translation>إصابة في الجلد: %L1.</translation>
    </message>
    <message>
        <source>Red skin: %L1.</source>
        <translation>احمرار الجلد: %L1.</translation>
    </message>
    <message>
        <source>No red skin.</source>
        <translation>بلا احمرار.</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 ثانية</translation>
    </message>
    <message>
        <source>%1 metres</source>
        <translation>%1 متر</translation>
    </message>
    <message>
        <source>%1 metres a second</source>
        <translation>%1 متر في الثانية</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 ٪</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 نقطة</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a value, a day</comment>
        <translation>%1 في %2</translation>
    </message>
    <message>
        <source>Last: %1.</source>
        <translation>آخر قياس: %1.</translation>
    </message>
    <message>
        <source>Before: %1.</source>
        <translation>قبله: %1.</translation>
    </message>
    <message>
        <source>Your clinic wanted to measure this by %1.</source>
        <translation>أرادت عيادتك قياس هذا قبل %1.</translation>
    </message>
    <message>
        <source>Your clinic will measure this by %1. You need not do it at home.</source>
        <translation>ستقيس عيادتك هذا قبل %1. لا حاجة لأن تقوم به في البيت.</translation>
    </message>
    <message>
        <source>Less is better. What a change means for you, your therapist can say.</source>
        <translation>الأقلّ أفضل. معنى التغيّر لك يقوله معالجك.</translation>
    </message>
    <message>
        <source>More is better. What a change means for you, your therapist can say.</source>
        <translation>الأكثر أفضل. معنى التغيّر لك يقوله معالجك.</translation>
    </message>
    <message>
        <source>%1, left leg</source>
        <translation>%1، الساق اليسرى</translation>
    </message>
    <message>
        <source>%1, right leg</source>
        <translation>%1، الساق اليمنى</translation>
    </message>
</context>
<context>
    <name>DrawnPage</name>
    <message>
        <source>How you are drawn</source>
        <translation>كيف تُرسم</translation>
    </message>
    <message>
        <source>Choose what feels right. Only this phone knows it.</source>
        <translation>اختر ما يناسبك. لا يعرفه إلا هذا الهاتف.</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>البنية</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>نحيلة</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>متوسطة</translation>
    </message>
    <message>
        <source>Heavy</source>
        <translation>ممتلئة</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>البشرة</translation>
    </message>
    <message>
        <source>Skin %L1 of %L2, from light to dark</source>
        <translation>بشرة %L1 من %L2، من الفاتح إلى الداكن</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>الرأس</translation>
    </message>
    <message>
        <source>With hair</source>
        <translation>بشعر</translation>
    </message>
    <message>
        <source>Without hair</source>
        <translation>بلا شعر</translation>
    </message>
    <message>
        <source>With a head scarf</source>
        <translation>بغطاء رأس</translation>
    </message>
</context>
<context>
    <name>EntryMedia</name>
    <message>
        <source>The photo and the clip are still coming. You can practise without them.</source>
        <translation>الصورة والمقطع ما زالا في الطريق. يمكنك أن تتمرّن من دونهما.</translation>
    </message>
    <message>
        <source>The photo is still coming. You can practise without it.</source>
        <translation>الصورة ما زالت في الطريق. يمكنك أن تتمرّن من دونها.</translation>
    </message>
    <message>
        <source>The clip is still coming. You can practise without it.</source>
        <translation>المقطع ما زال في الطريق. يمكنك أن تتمرّن من دونه.</translation>
    </message>
    <message>
        <source>The photo shows: %1</source>
        <translation>يظهر في الصورة: %1</translation>
    </message>
</context>
<context>
    <name>ErasePage</name>
    <message>
        <source>Erase everything about you here?</source>
        <translation>هل تمسح كل ما يخصك هنا؟</translation>
    </message>
    <message>
        <source>Erase this phone</source>
        <translation>مسح هذا الهاتف</translation>
    </message>
    <message>
        <source>Nothing waits to be sent.</source>
        <translation>لا شيء ينتظر الإرسال.</translation>
    </message>
    <message>
        <source>This cannot be undone.</source>
        <translation>لا يمكن التراجع عن هذا.</translation>
    </message>
    <message>
        <source>What goes</source>
        <translation>ما الذي يُمسح</translation>
    </message>
    <message>
        <source>Your programme, its photos and clips, your practices and messages, your settings and reminders: all that Newel keeps on this phone.</source>
        <translation>برنامجك وصوره ومقاطعه، وتمارينك ورسائلك، وإعداداتك وتذكيراتك: كل ما يحفظه Newel في هذا الهاتف.</translation>
    </message>
    <message>
        <source>What was not sent to the clinic yet. It is lost.</source>
        <translation>ما لم يُرسل إلى العيادة بعد. يضيع.</translation>
    </message>
    <message>
        <source>What stays</source>
        <translation>ما الذي يبقى</translation>
    </message>
    <message>
        <source>The clinic keeps what has reached it. Ask the clinic if you want that erased, too.</source>
        <translation>تحتفظ العيادة بما وصلها. اسأل العيادة إن أردت مسحه أيضًا.</translation>
    </message>
    <message>
        <source>Files that you saved from here yourself. You can delete them like any other file.</source>
        <translation>الملفات التي حفظتها بنفسك من هنا. يمكنك حذفها كأي ملف آخر.</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>بعد ذلك</translation>
    </message>
    <message>
        <source>This phone belongs to nobody. To use Newel here again you need a new code from the clinic.</source>
        <translation>لا يعود هذا الهاتف لأحد. لتستعمل Newel هنا من جديد تحتاج رمزًا جديدًا من العيادة.</translation>
    </message>
    <message>
        <source>First save everything about me</source>
        <translation>احفظ أولًا كل ما يخصني</translation>
    </message>
    <message>
        <source>Erase this phone …</source>
        <translation>مسح هذا الهاتف …</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>لا، أبقه</translation>
    </message>
    <message>
        <source>Yes, erase everything</source>
        <translation>نعم، امسح كل شيء</translation>
    </message>
</context>
<context>
    <name>FirstRunPage</name>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
</context>
<context>
    <name>GetReadyPage</name>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>These words are not in your language yet.</source>
        <translation>هذه الكلمات ليست بلغتك بعد.</translation>
    </message>
    <message>
        <source>Photo of the exercise, from your clinic</source>
        <translation>صورة التمرين من عيادتك</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>السند</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>انتبه</translation>
    </message>
    <message>
        <source>Have ready</source>
        <translation>جهّز</translation>
    </message>
    <message>
        <source>How you begin</source>
        <translation>كيف تبدأ</translation>
    </message>
    <message>
        <source>From your therapist</source>
        <translation>من معالجك</translation>
    </message>
    <message>
        <source>Then put the phone where you hear it. You need not look at it or touch it.</source>
        <translation>ثم ضع الهاتف حيث تسمعه. لا حاجة إلى النظر إليه أو لمسه.</translation>
    </message>
    <message>
        <source>Leave this exercise out</source>
        <translation>ترك هذا التمرين</translation>
    </message>
    <message>
        <source>Finish for today</source>
        <translation>إنهاء تمرين اليوم</translation>
    </message>
    <message>
        <source>Support is there: start</source>
        <translation>السند موجود: ابدأ</translation>
    </message>
</context>
<context>
    <name>HelpPage</name>
    <message>
        <source>Help</source>
        <translation>مساعدة</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <source>After a fall</source>
        <translation>بعد السقوط</translation>
    </message>
    <message>
        <source>Write to your therapist</source>
        <translation>اكتب إلى معالجك</translation>
    </message>
    <message>
        <source>Advice from your clinic</source>
        <translation>نصائح من عيادتك</translation>
    </message>
</context>
<context>
    <name>HowItGoesPage</name>
    <message>
        <source>How it goes</source>
        <translation>كيف تسير الأمور</translation>
    </message>
    <message>
        <source>Nothing to show yet. After your first practice you see here what you did and how it felt.</source>
        <translation>لا شيء للعرض بعد. بعد أول تمرين ترى هنا ما فعلته وكيف كان شعورك.</translation>
    </message>
    <message>
        <source>Pain after practice</source>
        <translation>الألم بعد التمرين</translation>
    </message>
    <message>
        <source>0 is no pain, 10 the worst you can think of.</source>
        <translation>٠ بلا ألم، و١٠ أسوأ ما يمكنك تخيّله.</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>الجهد</translation>
    </message>
    <message>
        <source>0 is no effort at all, 10 all you had.</source>
        <translation>٠ بلا جهد، و١٠ كل ما لديك.</translation>
    </message>
    <message>
        <source>What these numbers mean for you, your therapist can say.</source>
        <translation>ما تعنيه هذه الأرقام لك يستطيع معالجك أن يقوله.</translation>
    </message>
    <message>
        <source>Earlier weeks</source>
        <translation>أسابيع سابقة</translation>
    </message>
    <message>
        <source>Later weeks</source>
        <translation>أسابيع لاحقة</translation>
    </message>
    <message>
        <source>Prosthesis on</source>
        <translation>الطرف الصناعي ملبوس</translation>
    </message>
    <message>
        <source>Hours in a day.</source>
        <translation>ساعات في اليوم.</translation>
    </message>
    <message>
        <source>What your clinic measures</source>
        <translation>ما تقيسه عيادتك</translation>
    </message>
</context>
<context>
    <name>LanguagePage</name>
    <message>
        <source>Your language</source>
        <translation>لغتك</translation>
    </message>
    <message>
        <source>Screens, voice and exercises use this language. An exercise that is not in it yet is shown in English.</source>
        <translation>الشاشات والصوت والتمارين بهذه اللغة. والتمرين الذي لم يُترجم إليها بعد يظهر بالإنجليزية.</translation>
    </message>
</context>
<context>
    <name>LeaveOutPage</name>
    <message>
        <source>Why leave it out?</source>
        <translation>لماذا تتركه؟</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Newel</source>
        <translation>Newel</translation>
    </message>
</context>
<context>
    <name>NumberStepper</name>
    <message>
        <source>Less: %1</source>
        <translation>أقل: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>أكثر: %1</translation>
    </message>
</context>
<context>
    <name>OwnRecord</name>
    <message>
        <source>What Newel keeps about %1</source>
        <translation>ما يحفظه Newel عن %1</translation>
    </message>
    <message>
        <source>Written by Newel on %1. What was told later was not timed.</source>
        <translation>كتبه Newel في %1. ما حُكي لاحقًا لم يُقَس وقته.</translation>
    </message>
    <message>
        <source>Your clinic: %1, %2</source>
        <translation>عيادتك: %1، %2</translation>
    </message>
    <message>
        <source>What is not here: photos and clips, which are in Newel with your programme; and what the clinic keeps without this phone.</source>
        <translation>ما ليس هنا: الصور والمقاطع، وهي في Newel مع برنامجك؛ وما تحتفظ به العيادة بغير هذا الهاتف.</translation>
    </message>
    <message>
        <source>Programme %L1</source>
        <translation>برنامج %L1</translation>
    </message>
    <message>
        <source>From %1, %2 to %3</source>
        <translation>من %1، من %2 إلى %3</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>التمرين</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>كم</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>From your therapist</source>
        <translation>من معالجك</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>لا شيء بعد.</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>اكتملت</translation>
    </message>
    <message>
        <source>stopped for safety</source>
        <translation>أوقفت للسلامة</translation>
    </message>
    <message>
        <source>stopped by the clinic</source>
        <translation>أوقفتها العيادة</translation>
    </message>
    <message>
        <source>not that day</source>
        <translation>ليس في ذلك اليوم</translation>
    </message>
    <message>
        <source>cut off</source>
        <translation>انقطعت</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>أوقفت</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>لم يتم</translation>
    </message>
    <message>
        <source>%L1 of %L2</source>
        <translation>%L1 من %L2</translation>
    </message>
    <message>
        <source>told later</source>
        <translation>حُكي لاحقًا</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>قيس وقته</translation>
    </message>
    <message>
        <source>What you did</source>
        <translation>ما فعلته</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>ما تم</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>ألم</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>الجهد</translation>
    </message>
    <message>
        <source>How known</source>
        <translation>كيف عُرف</translation>
    </message>
    <message>
        <source>End</source>
        <translation>النهاية</translation>
    </message>
    <message>
        <source>You</source>
        <translation>أنت</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>الرسائل</translation>
    </message>
    <message>
        <source>From</source>
        <translation>من</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>النص</translation>
    </message>
    <message>
        <source>On hold now</source>
        <translation>موقوف الآن</translation>
    </message>
    <message>
        <source>From %1, %2: %3</source>
        <translation>من %1، %2: %3</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>الباقي</translation>
    </message>
    <message>
        <source>Facts about your body and home, each answer before a practice, and every other detail are in the other file that Newel can save, for other programs (JSON).</source>
        <translation>معلومات جسمك وبيتك وكل جواب قبل التمرين وسائر التفاصيل في الملف الآخر الذي يستطيع Newel حفظه، لبرامج أخرى (JSON).</translation>
    </message>
    <message>
        <source>Wearing time</source>
        <translation>وقت اللبس</translation>
    </message>
    <message>
        <source>Put on</source>
        <translation>اللبس</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>الخلع</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>الجلد</translation>
    </message>
    <message>
        <source>How it was written down</source>
        <translation>كيف سُجّل</translation>
    </message>
    <message>
        <source>What the clinic measured</source>
        <translation>ما قاسته العيادة</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>القياس</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>القيمة</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>مساعدة</translation>
    </message>
</context>
<context>
    <name>PainPage</name>
    <message>
        <source>Before you start</source>
        <translation>قبل أن تبدأ</translation>
    </message>
    <message>
        <source>How much pain do you have right now?</source>
        <translation>كم ألمك الآن؟</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>لا ألم</translation>
    </message>
    <message>
        <source>the worst you can think of</source>
        <translation>أشد ألم تتصوره</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
</context>
<context>
    <name>PairPage</name>
    <message>
        <source>Connect this phone to your clinic</source>
        <translation>اربط هذا الهاتف بعيادتك</translation>
    </message>
    <message>
        <source>Address of the clinic</source>
        <translation>عنوان العيادة</translation>
    </message>
    <message>
        <source>For example clinic.example:7443</source>
        <translation>مثلًا clinic.example:7443</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>الرمز</translation>
    </message>
    <message>
        <source>8 letters and numbers</source>
        <translation>٨ أحرف وأرقام</translation>
    </message>
    <message>
        <source>Or paste the text of the QR code</source>
        <translation>أو ألصق نص رمز QR</translation>
    </message>
    <message>
        <source>Text of the QR code</source>
        <translation>نص رمز QR</translation>
    </message>
    <message>
        <source>It begins with newel:1</source>
        <translation>يبدأ بـ newel:1</translation>
    </message>
    <message>
        <source>Connect with this text</source>
        <translation>الربط بهذا النص</translation>
    </message>
    <message>
        <source>Newel is for people whose therapist has examined them and written them a programme. What it is and is not stands under Help.</source>
        <translation>Newel لمن فحصه معالجه وكتب له برنامجًا. ما هو وما ليس هو مذكور في «مساعدة».</translation>
    </message>
    <message>
        <source>Connecting …</source>
        <translation>جارٍ الربط …</translation>
    </message>
    <message>
        <source>Connect</source>
        <translation>اربط</translation>
    </message>
    <message>
        <source>The clinic shows you a square, and beside it an address and a code. Point the camera at the square, or type both. They work once.</source>
        <translation>تعرض لك العيادة مربعًا، وبجانبه عنوان ورمز. وجّه الكاميرا إلى المربع، أو اكتب الاثنين. يعملان مرة واحدة.</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>استخدم الكاميرا</translation>
    </message>
</context>
<context>
    <name>PairedPage</name>
    <message>
        <source>Hello %1</source>
        <translation>مرحبًا %1</translation>
    </message>
    <message>
        <source>This phone is now connected to %1.</source>
        <translation>هذا الهاتف مربوط الآن بـ %1.</translation>
    </message>
    <message>
        <source>Look at the clinic&apos;s screen. Does it show the same signs?</source>
        <translation>انظر إلى شاشة العيادة. هل تعرض العلامات نفسها؟</translation>
    </message>
    <message>
        <source>Yes, the same</source>
        <translation>نعم، نفسها</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>تابع</translation>
    </message>
    <message>
        <source>No, they differ</source>
        <translation>لا، مختلفة</translation>
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
    <name>Phrasing</name>
    <message numerus="yes">
        <source>%Ln second(s)</source>
        <translation>
            <numerusform>٠ ثانية</numerusform>
            <numerusform>ثانية واحدة</numerusform>
            <numerusform>ثانيتان</numerusform>
            <numerusform>%Ln ثوانٍ</numerusform>
            <numerusform>%Ln ثانية</numerusform>
            <numerusform>%Ln ثانية</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s)</source>
        <translation>
            <numerusform>٠ مرة</numerusform>
            <numerusform>مرة واحدة</numerusform>
            <numerusform>مرتان</numerusform>
            <numerusform>%Ln مرات</numerusform>
            <numerusform>%Ln مرة</numerusform>
            <numerusform>%Ln مرة</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln set(s) of %L1</source>
        <translation>
            <numerusform>٠ مجموعة من %L1</numerusform>
            <numerusform>مجموعة واحدة من %L1</numerusform>
            <numerusform>مجموعتان من %L1</numerusform>
            <numerusform>%Ln مجموعات من %L1</numerusform>
            <numerusform>%Ln مجموعة من %L1</numerusform>
            <numerusform>%Ln مجموعة من %L1</numerusform>
        </translation>
    </message>
    <message>
        <source>, hold %1</source>
        <translation>، ثبات %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) up and down</source>
        <translation>
            <numerusform>٠ مرة صعودًا ونزولًا</numerusform>
            <numerusform>مرة واحدة صعودًا ونزولًا</numerusform>
            <numerusform>مرتان صعودًا ونزولًا</numerusform>
            <numerusform>%Ln مرات صعودًا ونزولًا</numerusform>
            <numerusform>%Ln مرة صعودًا ونزولًا</numerusform>
            <numerusform>%Ln مرة صعودًا ونزولًا</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>، </translation>
    </message>
    <message numerus="yes">
        <source>%Ln step(s)</source>
        <translation>
            <numerusform>٠ درجة</numerusform>
            <numerusform>درجة واحدة</numerusform>
            <numerusform>درجتان</numerusform>
            <numerusform>%Ln درجات</numerusform>
            <numerusform>%Ln درجة</numerusform>
            <numerusform>%Ln درجة</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) there and back</source>
        <translation>
            <numerusform>٠ مرة ذهابًا وإيابًا</numerusform>
            <numerusform>مرة واحدة ذهابًا وإيابًا</numerusform>
            <numerusform>مرتان ذهابًا وإيابًا</numerusform>
            <numerusform>%Ln مرات ذهابًا وإيابًا</numerusform>
            <numerusform>%Ln مرة ذهابًا وإيابًا</numerusform>
            <numerusform>%Ln مرة ذهابًا وإيابًا</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln metre(s)</source>
        <translation>
            <numerusform>٠ متر</numerusform>
            <numerusform>متر واحد</numerusform>
            <numerusform>متران</numerusform>
            <numerusform>%Ln أمتار</numerusform>
            <numerusform>%Ln مترًا</numerusform>
            <numerusform>%Ln متر</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) %1</source>
        <translation>
            <numerusform>٠ مرة %1</numerusform>
            <numerusform>مرة واحدة %1</numerusform>
            <numerusform>مرتان %1</numerusform>
            <numerusform>%Ln مرات %1</numerusform>
            <numerusform>%Ln مرة %1</numerusform>
            <numerusform>%Ln مرة %1</numerusform>
        </translation>
    </message>
    <message>
        <source>prosthesis off</source>
        <translation>من دون الطرف الصناعي</translation>
    </message>
    <message>
        <source>prosthesis on</source>
        <translation>مع الطرف الصناعي</translation>
    </message>
    <message>
        <source>%1, sound limb</source>
        <translation>%1، السليمة</translation>
    </message>
    <message>
        <source>%1, prosthesis</source>
        <translation>%1، الطرف الصناعي</translation>
    </message>
    <message>
        <source>%1, residual limb</source>
        <translation>%1، الطرف المتبقي</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>ألم</translation>
    </message>
    <message>
        <source>Dizzy</source>
        <translation>دوخة</translation>
    </message>
    <message>
        <source>Unsteady</source>
        <translation>عدم ثبات</translation>
    </message>
    <message>
        <source>The prosthesis</source>
        <translation>الطرف الصناعي</translation>
    </message>
    <message>
        <source>Tired</source>
        <translation>تعب</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>قاطعني شيء</translation>
    </message>
    <message>
        <source>Chest pain</source>
        <translation>ألم في الصدر</translation>
    </message>
    <message>
        <source>Short of breath</source>
        <translation>ضيق نفس</translation>
    </message>
    <message>
        <source>I fell</source>
        <translation>وقعت</translation>
    </message>
    <message>
        <source>My skin</source>
        <translation>الجلد</translation>
    </message>
    <message>
        <source>The clinic said stop</source>
        <translation>العيادة قالت توقف</translation>
    </message>
    <message>
        <source>Sudden weakness, or trouble with speech</source>
        <translation>ضعف مفاجئ أو صعوبة في الكلام</translation>
    </message>
    <message>
        <source>Swollen limb</source>
        <translation>طرف متورم</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>لا وقت</translation>
    </message>
    <message>
        <source>I feel ill</source>
        <translation>أشعر بالمرض</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>شيء آخر</translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) a week</source>
        <translation>
            <numerusform>٠ مرة في الأسبوع</numerusform>
            <numerusform>مرة واحدة في الأسبوع</numerusform>
            <numerusform>مرتان في الأسبوع</numerusform>
            <numerusform>%Ln مرات في الأسبوع</numerusform>
            <numerusform>%Ln مرة في الأسبوع</numerusform>
            <numerusform>%Ln مرة في الأسبوع</numerusform>
        </translation>
    </message>
    <message>
        <source>every day</source>
        <translation>كل يوم</translation>
    </message>
    <message numerus="yes">
        <source>%Ln minute(s)</source>
        <translation>
            <numerusform>٠ دقيقة</numerusform>
            <numerusform>دقيقة واحدة</numerusform>
            <numerusform>دقيقتان</numerusform>
            <numerusform>%Ln دقائق</numerusform>
            <numerusform>%Ln دقيقة</numerusform>
            <numerusform>%Ln دقيقة</numerusform>
        </translation>
    </message>
    <message>
        <source>today at %1</source>
        <translation>اليوم الساعة %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 الساعة %2</translation>
    </message>
    <message>
        <source>The clinic cannot be reached at the moment.</source>
        <translation>لا يمكن الوصول إلى العيادة الآن.</translation>
    </message>
    <message>
        <source>The date on this phone seems wrong. Please set it.</source>
        <translation>يبدو أن تاريخ هذا الهاتف خاطئ. اضبطه من فضلك.</translation>
    </message>
    <message>
        <source>The clinic ended this phone&apos;s access. Call the clinic.</source>
        <translation>أنهت العيادة دخول هذا الهاتف. اتصل بالعيادة.</translation>
    </message>
    <message>
        <source>The clinic&apos;s computer could not be trusted. Call the clinic.</source>
        <translation>لم يمكن الوثوق بحاسوب العيادة. اتصل بالعيادة.</translation>
    </message>
    <message>
        <source>This phone&apos;s memory is full. Please make room.</source>
        <translation>ذاكرة هذا الهاتف ممتلئة. أفسح مكانًا من فضلك.</translation>
    </message>
    <message>
        <source>Contact with the clinic failed. The phone tries again by itself.</source>
        <translation>فشل الاتصال بالعيادة. يحاول الهاتف من جديد وحده.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln record(s) kept on this phone, will be sent.</source>
        <translation>
            <numerusform>لا سجلات تنتظر الإرسال.</numerusform>
            <numerusform>سجل واحد محفوظ على هذا الهاتف، سيُرسل.</numerusform>
            <numerusform>سجلان محفوظان على هذا الهاتف، سيُرسلان.</numerusform>
            <numerusform>%Ln سجلات محفوظة على هذا الهاتف، ستُرسل.</numerusform>
            <numerusform>%Ln سجلًا محفوظًا على هذا الهاتف، ستُرسل.</numerusform>
            <numerusform>%Ln سجل محفوظ على هذا الهاتف، ستُرسل.</numerusform>
        </translation>
    </message>
    <message>
        <source>All has reached the clinic. Last contact %1.</source>
        <translation>وصل كل شيء إلى العيادة. آخر اتصال %1.</translation>
    </message>
    <message>
        <source>No contact with the clinic yet.</source>
        <translation>لم يحدث اتصال بالعيادة بعد.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln record(s) could not be taken by the clinic and stay on this phone. Call the clinic.</source>
        <translation>
            <numerusform>لا سجلات مرفوضة.</numerusform>
            <numerusform>لم تستطع العيادة أخذ سجل واحد، وهو باقٍ على هذا الهاتف. اتصل بالعيادة.</numerusform>
            <numerusform>لم تستطع العيادة أخذ سجلين، وهما باقيان على هذا الهاتف. اتصل بالعيادة.</numerusform>
            <numerusform>لم تستطع العيادة أخذ %Ln سجلات، وهي باقية على هذا الهاتف. اتصل بالعيادة.</numerusform>
            <numerusform>لم تستطع العيادة أخذ %Ln سجلًا، وهي باقية على هذا الهاتف. اتصل بالعيادة.</numerusform>
            <numerusform>لم تستطع العيادة أخذ %Ln سجل، وهي باقية على هذا الهاتف. اتصل بالعيادة.</numerusform>
        </translation>
    </message>
    <message>
        <source>This phone&apos;s memory is full, so nothing can be kept. Please make room, then try again.</source>
        <translation>ذاكرة هذا الهاتف ممتلئة فلا يُحفظ شيء. أفسح مكانًا ثم حاول من جديد.</translation>
    </message>
    <message>
        <source>A record on this phone cannot be read. Call the clinic, and do not erase the phone.</source>
        <translation>لا يمكن قراءة سجل على هذا الهاتف. اتصل بالعيادة ولا تمسح الهاتف.</translation>
    </message>
    <message>
        <source>Something went wrong and nothing was changed. Try again; if it stays, call the clinic. (%1)</source>
        <translation>حدث خطأ ولم يتغير شيء. حاول من جديد، وإن بقي فاتصل بالعيادة. (%1)</translation>
    </message>
    <message>
        <source>at any time of day</source>
        <translation>في أي وقت من اليوم</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>من %1 إلى %2</translation>
    </message>
</context>
<context>
    <name>PracticePaused</name>
    <message>
        <source>Paused</source>
        <translation>متوقف مؤقتًا</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>تابع</translation>
    </message>
    <message>
        <source>Say it again</source>
        <translation>أعد القول</translation>
    </message>
    <message>
        <source>Leave this exercise out</source>
        <translation>ترك هذا التمرين</translation>
    </message>
    <message>
        <source>Go on, slower</source>
        <translation>تابع بشكل أبطأ</translation>
    </message>
</context>
<context>
    <name>PracticeView</name>
    <message>
        <source>Exercise %L1 of %L2</source>
        <translation>تمرين %L1 من %L2</translation>
    </message>
    <message>
        <source>%L1 of %L2</source>
        <translation>%L1 من %L2</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>انتظر</translation>
    </message>
    <message>
        <source>Done, go on</source>
        <translation>تم، تابع</translation>
    </message>
    <message>
        <source>Longer rest</source>
        <translation>راحة أطول</translation>
    </message>
    <message>
        <source>Go on now</source>
        <translation>تابع الآن</translation>
    </message>
</context>
<context>
    <name>ProgrammePage</name>
    <message>
        <source>What is new</source>
        <translation>الجديد</translation>
    </message>
    <message>
        <source>For all exercises</source>
        <translation>لكل التمارين</translation>
    </message>
    <message>
        <source>These words are not in your language yet.</source>
        <translation>هذه الكلمات ليست بلغتك بعد.</translation>
    </message>
    <message>
        <source>Photo of the exercise, from your clinic</source>
        <translation>صورة التمرين من عيادتك</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>From your therapist: %1</source>
        <translation>من معالجك: %1</translation>
    </message>
    <message>
        <source>How you begin</source>
        <translation>كيف تبدأ</translation>
    </message>
    <message>
        <source>Done well</source>
        <translation>الأداء الجيد</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>انتبه</translation>
    </message>
    <message>
        <source>Stop if</source>
        <translation>توقف إذا</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>نصائح</translation>
    </message>
    <message>
        <source>Wearing time</source>
        <translation>وقت اللبس</translation>
    </message>
    <message>
        <source>See and tell</source>
        <translation>عرض وتسجيل</translation>
    </message>
    <message>
        <source>I did this away from the phone</source>
        <translation>فعلت هذا بعيدًا عن الهاتف</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
</context>
<context>
    <name>RailList</name>
    <message>
        <source>done</source>
        <translation>تم</translation>
    </message>
    <message>
        <source>on hold</source>
        <translation>موقوف</translation>
    </message>
    <message>
        <source>%L1 min</source>
        <translation>%L1 د</translation>
    </message>
</context>
<context>
    <name>RatingPage</name>
    <message>
        <source>How hard was it?</source>
        <translation>كم كان صعبًا؟</translation>
    </message>
    <message>
        <source>How much pain do you have now?</source>
        <translation>كم ألمك الآن؟</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>لا ألم</translation>
    </message>
    <message>
        <source>the worst you can think of</source>
        <translation>أشد ألم تتصوره</translation>
    </message>
    <message>
        <source>no effort at all</source>
        <translation>لا جهد</translation>
    </message>
    <message>
        <source>all you had</source>
        <translation>كل ما عندك</translation>
    </message>
    <message>
        <source>Back to pain</source>
        <translation>عودة إلى الألم</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <source>A short note when something is due, so that you need not keep it in mind. The note does not say what Newel is for: others may see your screen.</source>
        <translation>ملاحظة قصيرة حين يحين شيء، فلا تحتاج أن تتذكره. لا تقول الملاحظة ما هو Newel: قد يرى غيرك شاشتك.</translation>
    </message>
    <message>
        <source>Remind me</source>
        <translation>ذكّرني</translation>
    </message>
    <message>
        <source>No reminder can be shown</source>
        <translation>لا يمكن عرض أي تذكير</translation>
    </message>
    <message>
        <source>At what time</source>
        <translation>في أي ساعة</translation>
    </message>
    <message>
        <source>For what is due %1</source>
        <translation>لما يحين %1</translation>
    </message>
    <message>
        <source>Quiet hours</source>
        <translation>ساعات الهدوء</translation>
    </message>
    <message>
        <source>There are none: a reminder may come at any hour.</source>
        <translation>لا توجد: قد يأتي التذكير في أي ساعة.</translation>
    </message>
    <message>
        <source>No reminder comes from %1 to %2.</source>
        <translation>لا يأتي تذكير من %1 إلى %2.</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>الهدوء من</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>الهدوء حتى</translation>
    </message>
    <message>
        <source>If you press Later</source>
        <translation>إذا ضغطت «لاحقًا»</translation>
    </message>
    <message>
        <source>Remind me again in</source>
        <translation>ذكّرني مرة أخرى بعد</translation>
    </message>
    <message>
        <source>min</source>
        <translation>دقيقة</translation>
    </message>
    <message>
        <source>After three reminders in a row without an answer, only one a day comes, until you press one or open Newel.</source>
        <translation>بعد ثلاثة تذكيرات متتالية بلا رد يأتي واحد فقط في اليوم، إلى أن تضغط واحدًا أو تفتح Newel.</translation>
    </message>
</context>
<context>
    <name>ScalePicker</name>
    <message>
        <source>0 is %1. 10 is %2.</source>
        <translation>٠ يعني %1. ١٠ يعني %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Point at the square</source>
        <translation>وجّه الهاتف إلى المربع</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>ما تراه الكاميرا</translation>
    </message>
    <message>
        <source>This square is not from a clinic. Look for the one under “Pair a phone”.</source>
        <translation>هذا المربع ليس من عيادة. ابحث عن المربع الذي تحت «Pair a phone».</translation>
    </message>
    <message>
        <source>Hold the phone so that the square on the clinic&apos;s screen is inside the frame. It is read by itself.</source>
        <translation>أمسك الهاتف بحيث يكون المربع الذي على شاشة العيادة داخل الإطار. يُقرأ من تلقاء نفسه.</translation>
    </message>
    <message>
        <source>Nothing that the camera sees is kept or sent.</source>
        <translation>لا يُحفظ ولا يُرسل شيء مما تراه الكاميرا.</translation>
    </message>
    <message>
        <source>Type the code instead</source>
        <translation>اكتب الرمز بدلًا من ذلك</translation>
    </message>
</context>
<context>
    <name>SettingsMine</name>
    <message>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <source>When to remind me</source>
        <translation>متى أُذكَّر</translation>
    </message>
    <message>
        <source>What this phone keeps about you</source>
        <translation>ما يحفظه هذا الهاتف عنك</translation>
    </message>
    <message>
        <source>Save everything about me</source>
        <translation>احفظ كل ما يخصني</translation>
    </message>
    <message>
        <source>Erase this phone …</source>
        <translation>مسح هذا الهاتف …</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>حجم النص</translation>
    </message>
    <message>
        <source>Say the cues aloud</source>
        <translation>قول التعليمات بصوت</translation>
    </message>
    <message>
        <source>Tones are heard either way.</source>
        <translation>تُسمع النغمات في كل حال.</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>فاتح أو داكن</translation>
    </message>
    <message>
        <source>As the phone</source>
        <translation>مثل الهاتف</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>فاتح</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>داكن</translation>
    </message>
    <message>
        <source>Pictures of the exercises</source>
        <translation>رسوم التمارين</translation>
    </message>
    <message>
        <source>Still pictures, no movement</source>
        <translation>رسوم ثابتة بلا حركة</translation>
    </message>
    <message>
        <source>The figure goes from pose to pose.</source>
        <translation>ينتقل الرسم من وضع إلى وضع.</translation>
    </message>
    <message>
        <source>How you are drawn</source>
        <translation>كيف تُرسم</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>اللغة</translation>
    </message>
    <message>
        <source>Check the sound</source>
        <translation>جرّب الصوت</translation>
    </message>
    <message>
        <source>More contrast</source>
        <translation>تباين أعلى</translation>
    </message>
    <message>
        <source>Stronger colours, for eyes that need them.</source>
        <translation>ألوان أقوى للعيون التي تحتاجها.</translation>
    </message>
    <message>
        <source>What Newel is, and is not</source>
        <translation>ما هو نيويل وما ليس هو</translation>
    </message>
    <message>
        <source>From the first start</source>
        <translation>من التشغيل الأول</translation>
    </message>
    <message>
        <source>How large should words be?</source>
        <translation>ما الحجم المناسب للكلمات؟</translation>
    </message>
    <message>
        <source>May the phone remind you?</source>
        <translation>هل يذكّرك الهاتف؟</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <source>Vibrate with every tone</source>
        <translation>الاهتزاز مع كل نغمة</translation>
    </message>
    <message>
        <source>For a phone you can feel, in a pocket or in your hand.</source>
        <translation>لهاتف يمكنك أن تشعر به، في الجيب أو في اليد.</translation>
    </message>
    <message>
        <source>On now, because the phone asks for it everywhere.</source>
        <translation>مفعّل الآن، لأن الهاتف يطلبه في كل مكان.</translation>
    </message>
</context>
<context>
    <name>SoundCheckPage</name>
    <message>
        <source>Can you hear the phone?</source>
        <translation>هل تسمع الهاتف؟</translation>
    </message>
    <message>
        <source>While you practise you look at the floor, not at the phone. A tone and a voice tell you what comes next.</source>
        <translation>أثناء التمرين تنظر إلى الأرض لا إلى الهاتف. نغمة وصوت يخبرانك بما يأتي.</translation>
    </message>
    <message>
        <source>Play it again</source>
        <translation>أعد التشغيل</translation>
    </message>
    <message>
        <source>Play a tone and the voice</source>
        <translation>شغّل نغمة والصوت</translation>
    </message>
    <message>
        <source>Did you hear it?</source>
        <translation>هل سمعت؟</translation>
    </message>
    <message>
        <source>Yes, tone and voice</source>
        <translation>نعم، النغمة والصوت</translation>
    </message>
    <message>
        <source>Only the tone</source>
        <translation>النغمة فقط</translation>
    </message>
    <message>
        <source>No, nothing</source>
        <translation>لا، لم أسمع شيئًا</translation>
    </message>
    <message>
        <source>Good. You can put the phone down while you practise.</source>
        <translation>حسنًا. يمكنك وضع الهاتف جانبًا أثناء التمرين.</translation>
    </message>
    <message>
        <source>The voice cannot be heard</source>
        <translation>الصوت غير مسموع</translation>
    </message>
    <message>
        <source>Nothing can be heard</source>
        <translation>لا يُسمع شيء</translation>
    </message>
    <message>
        <source>Every word is on the screen as well, and the tones tell when to change. Put the phone where you can read it.</source>
        <translation>كل كلمة مكتوبة على الشاشة أيضًا، والنغمات تخبرك متى تغيّر. ضع الهاتف حيث يمكنك قراءته.</translation>
    </message>
    <message>
        <source>Turn the sound up with the keys at the side, and take the phone off silent. If you use headphones or a hearing aid, see that it is connected. Then play it again. Every word is on the screen as well.</source>
        <translation>ارفع الصوت بالأزرار الجانبية وألغِ وضع الصامت. إن كنت تستعمل سماعات أو معينة سمعية فتأكد أنها متصلة. ثم أعد التشغيل. كل كلمة مكتوبة على الشاشة أيضًا.</translation>
    </message>
</context>
<context>
    <name>StopButton</name>
    <message>
        <source>Stop</source>
        <translation>قف</translation>
    </message>
</context>
<context>
    <name>TakeAlongPage</name>
    <message>
        <source>Writing the file …</source>
        <translation>تجري كتابة الملف …</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>تم الحفظ</translation>
    </message>
    <message>
        <source>Nothing was saved</source>
        <translation>لم يُحفظ شيء</translation>
    </message>
    <message>
        <source>Save everything about me</source>
        <translation>احفظ كل ما يخصني</translation>
    </message>
    <message>
        <source>Newel writes what it keeps about you into a file that is yours: your programme, what you did and felt, messages.</source>
        <translation>يكتب Newel ما يحفظه عنك في ملف لك: برنامجك، وما فعلته وشعرت به، والرسائل.</translation>
    </message>
    <message>
        <source>The file is not locked</source>
        <translation>الملف غير مقفل</translation>
    </message>
    <message>
        <source>Whoever opens it can read it. Keep it where only you can get at it.</source>
        <translation>من يفتحه يستطيع قراءته. ضعه حيث لا يصل إليه غيرك.</translation>
    </message>
    <message>
        <source>Save to read and print (PDF)</source>
        <translation>احفظ للقراءة والطباعة (PDF)</translation>
    </message>
    <message>
        <source>Save for other programs (JSON)</source>
        <translation>احفظ لبرامج أخرى (JSON)</translation>
    </message>
</context>
<context>
    <name>TellLaterPage</name>
    <message>
        <source>What did you do away from the phone?</source>
        <translation>ماذا فعلت بعيدًا عن الهاتف؟</translation>
    </message>
    <message>
        <source>How much of it did you do?</source>
        <translation>كم فعلت منه؟</translation>
    </message>
    <message>
        <source>How much pain did you have afterwards?</source>
        <translation>كم كان الألم بعده؟</translation>
    </message>
    <message>
        <source>How hard was it?</source>
        <translation>كم كان صعبًا؟</translation>
    </message>
    <message>
        <source>Did anything happen?</source>
        <translation>هل حدث شيء؟</translation>
    </message>
    <message>
        <source>Please read this now</source>
        <translation>اقرأ هذا الآن</translation>
    </message>
    <message>
        <source>Written down</source>
        <translation>تم التدوين</translation>
    </message>
    <message>
        <source>From the last seven days. The clinic sees that you told it later and that the phone did not time it.</source>
        <translation>من الأيام السبعة الأخيرة. ترى العيادة أنك حكيته لاحقًا وأن الهاتف لم يقس وقته.</translation>
    </message>
    <message>
        <source>All that was due in the last seven days is written down already.</source>
        <translation>كل ما كان مطلوبًا في الأيام السبعة الأخيرة مدوّن من قبل.</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>كله</translation>
    </message>
    <message>
        <source>Most of it</source>
        <translation>أكثره</translation>
    </message>
    <message>
        <source>About half</source>
        <translation>نصفه تقريبًا</translation>
    </message>
    <message>
        <source>A little of it</source>
        <translation>قليلًا منه</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>لا ألم</translation>
    </message>
    <message>
        <source>the worst you can think of</source>
        <translation>أشد ألم تتصوره</translation>
    </message>
    <message>
        <source>no effort at all</source>
        <translation>لا جهد</translation>
    </message>
    <message>
        <source>all you had</source>
        <translation>كل ما عندك</translation>
    </message>
    <message>
        <source>%1. Written down as told later, not timed.</source>
        <translation>%1. دُوّن على أنه حُكي لاحقًا ولم يُقَس وقته.</translation>
    </message>
    <message>
        <source>Tell of another one</source>
        <translation>احكِ عن آخر</translation>
    </message>
    <message>
        <source>No, nothing</source>
        <translation>لا، لا شيء</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>العودة إلى اليوم</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
</context>
<context>
    <name>TextSizePage</name>
    <message>
        <source>Stand up slowly, and hold on with both hands.</source>
        <translation>قف ببطء وتمسّك بكلتا يديك.</translation>
    </message>
    <message>
        <source>How large should words be?</source>
        <translation>ما الحجم المناسب للكلمات؟</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>حجم النص</translation>
    </message>
    <message>
        <source>This is how it looks:</source>
        <translation>هكذا تظهر:</translation>
    </message>
    <message>
        <source>Read it to me</source>
        <translation>اقرأها لي</translation>
    </message>
    <message>
        <source>More contrast</source>
        <translation>تباين أعلى</translation>
    </message>
    <message>
        <source>Stronger colours, for eyes that need them.</source>
        <translation>ألوان أقوى للعيون التي تحتاجها.</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Questions? Call %1: %2</source>
        <translation>أسئلة؟ اتصل بـ %1: %2</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>جديد: %1</translation>
    </message>
    <message>
        <source>See what is new</source>
        <translation>انظر الجديد</translation>
    </message>
    <message>
        <source>To read today</source>
        <translation>لقراءة اليوم</translation>
    </message>
    <message>
        <source>My programme</source>
        <translation>برنامجي</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>ابدأ</translation>
    </message>
    <message>
        <source>I have a new code</source>
        <translation>لدي رمز جديد</translation>
    </message>
    <message>
        <source>Have ready</source>
        <translation>جهّز</translation>
    </message>
    <message>
        <source>How it goes</source>
        <translation>كيف تسير الأمور</translation>
    </message>
    <message>
        <source>I did this away from the phone</source>
        <translation>فعلت هذا بعيدًا عن الهاتف</translation>
    </message>
</context>
<context>
    <name>TroubleWindow</name>
    <message>
        <source>Newel</source>
        <translation>Newel</translation>
    </message>
</context>
<context>
    <name>UnfinishedPage</name>
    <message>
        <source>Go on where you stopped?</source>
        <translation>هل تتابع من حيث توقفت؟</translation>
    </message>
    <message>
        <source>All you did is kept. If you go on, the step you were in is done again from its start.</source>
        <translation>كل ما فعلته محفوظ. إذا تابعت تُعاد الخطوة التي كنت فيها من أولها.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>تابع</translation>
    </message>
    <message>
        <source>Close it</source>
        <translation>أغلقه</translation>
    </message>
</context>
<context>
    <name>VerdictPage</name>
    <message>
        <source>Stop now</source>
        <translation>توقف الآن</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>لاحظ</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
</context>
<context>
    <name>WearCard</name>
    <message>
        <source>Wearing time</source>
        <translation>وقت اللبس</translation>
    </message>
</context>
<context>
    <name>WearPage</name>
    <message>
        <source>Wearing time</source>
        <translation>وقت اللبس</translation>
    </message>
    <message>
        <source>Take it off now</source>
        <translation>اخلعه الآن</translation>
    </message>
    <message>
        <source>Longer than planned can hurt the skin.</source>
        <translation>أكثر من المقرّر قد يؤذي الجلد.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln minute(s) left</source>
        <translation>
            <numerusform>لم تبقَ دقائق</numerusform>
            <numerusform>بقيت دقيقة واحدة</numerusform>
            <numerusform>بقيت دقيقتان</numerusform>
            <numerusform>بقيت %Ln دقائق</numerusform>
            <numerusform>بقيت %Ln دقيقة</numerusform>
            <numerusform>بقيت %Ln دقيقة</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>الخلع</translation>
    </message>
    <message>
        <source>Put on</source>
        <translation>اللبس</translation>
    </message>
    <message>
        <source>I have put it on all the same</source>
        <translation>لبسته على الرغم من ذلك</translation>
    </message>
    <message>
        <source>Yes, it was gone</source>
        <translation>نعم، كان قد زال</translation>
    </message>
    <message>
        <source>Yes, it is gone</source>
        <translation>نعم، زال</translation>
    </message>
    <message>
        <source>No, still red</source>
        <translation>لا، ما زال أحمر</translation>
    </message>
    <message>
        <source>The last two weeks</source>
        <translation>آخر أسبوعين</translation>
    </message>
    <message>
        <source>I have taken it off</source>
        <translation>خلعته</translation>
    </message>
    <message>
        <source>That is what I see</source>
        <translation>هذا ما أراه</translation>
    </message>
    <message>
        <source>I have put it on</source>
        <translation>لبسته</translation>
    </message>
</context>
<context>
    <name>WearWords</name>
    <message numerus="yes">
        <source>%Ln hour(s)</source>
        <translation>
            <numerusform>%Ln ساعة</numerusform>
            <numerusform>ساعة واحدة</numerusform>
            <numerusform>ساعتان</numerusform>
            <numerusform>%Ln ساعات</numerusform>
            <numerusform>%Ln ساعة</numerusform>
            <numerusform>%Ln ساعة</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>hours, minutes</comment>
        <translation>%1 و%2</translation>
    </message>
    <message>
        <source>as long as you like</source>
        <translation>ما شئت من الوقت</translation>
    </message>
    <message>
        <source>once a day for %1</source>
        <translation>مرة في اليوم لمدة %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) a day for %1</source>
        <translation>
            <numerusform>%Ln مرة في اليوم لمدة %1</numerusform>
            <numerusform>مرة واحدة في اليوم لمدة %1</numerusform>
            <numerusform>مرتين في اليوم لمدة %1</numerusform>
            <numerusform>%Ln مرات في اليوم لمدة %1</numerusform>
            <numerusform>%Ln مرة في اليوم لمدة %1</numerusform>
            <numerusform>%Ln مرة في اليوم لمدة %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing: the skin looks as always</source>
        <translation>لا شيء: الجلد كما هو دائمًا</translation>
    </message>
    <message>
        <source>Red skin</source>
        <translation>جلد أحمر</translation>
    </message>
    <message>
        <source>A new bruise</source>
        <translation>كدمة جديدة</translation>
    </message>
    <message>
        <source>A blister</source>
        <translation>فقاعة</translation>
    </message>
    <message>
        <source>Open skin</source>
        <translation>جلد مفتوح</translation>
    </message>
    <message>
        <source>Fluid comes out</source>
        <translation>يخرج سائل</translation>
    </message>
    <message>
        <source>Pain that grows</source>
        <translation>ألم يزداد</translation>
    </message>
    <message>
        <source>Swelling, or it does not go on any more</source>
        <translation>تورّم، أو لم يعد يدخل</translation>
    </message>
    <message>
        <source>Numb, cold or another colour</source>
        <translation>خدر أو برودة أو لون آخر</translation>
    </message>
    <message>
        <source>Fever</source>
        <translation>حمّى</translation>
    </message>
    <message>
        <source>Red, gone after %1</source>
        <translation>أحمر، زال بعد %1</translation>
    </message>
    <message>
        <source>Red, still there after %1</source>
        <translation>أحمر، بقي بعد %1</translation>
    </message>
</context>
<context>
    <name>WeekGrid</name>
    <message>
        <source>What the signs mean</source>
        <translation>معاني العلامات</translation>
    </message>
    <message>
        <source>all done</source>
        <translation>أُنجز كله</translation>
    </message>
    <message>
        <source>done in part</source>
        <translation>أُنجز جزء منه</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>لم يتم</translation>
    </message>
    <message>
        <source>excused: nothing was expected of you</source>
        <translation>معفى: لم يُنتظر منك شيء</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>لم يحن بعد</translation>
    </message>
    <message>
        <source>not known: this phone was not there yet</source>
        <translation>غير معروف: لم يكن هذا الهاتف موجودًا بعد</translation>
    </message>
    <message>
        <source>An empty box: nothing was due that day.</source>
        <translation>خانة فارغة: لم يكن شيء مطلوبًا ذلك اليوم.</translation>
    </message>
</context>
<context>
    <name>WhatHappenedPage</name>
    <message>
        <source>Stopped</source>
        <translation>توقفت</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>ماذا حدث؟</translation>
    </message>
    <message>
        <source>In danger? Call %1 first.</source>
        <translation>في خطر؟ اتصل أولًا بـ %1.</translation>
    </message>
</context>
<context>
    <name>WhatNewelIs</name>
    <message>
        <source>What Newel is</source>
        <translation>ما هو Newel</translation>
    </message>
    <message>
        <source>Newel is for adults who use a leg prosthesis and whose therapist has examined them, taught them the exercises and signed the programme. It shows the programme, leads and times practice at home, keeps what you did and felt, and sends that to the clinic.</source>
        <translation>Newel للبالغين الذين يستعملون طرفًا صناعيًا للساق وفحصهم معالجهم وعلّمهم التمارين ووقّع البرنامج. يعرض البرنامج، ويقود التمرين في البيت ويضبط وقته، ويحفظ ما فعلته وما شعرت به، ويرسله إلى العيادة.</translation>
    </message>
    <message>
        <source>What Newel is not</source>
        <translation>ما ليس Newel</translation>
    </message>
    <message>
        <source>It does not examine you, name an illness, choose exercises or make them harder. Nobody watches while you practise, and it does not call for help. It is not for first steps with a new prosthesis without someone beside you, nor for people who were told not to exercise alone.</source>
        <translation>لا يفحصك، ولا يسمّي مرضًا، ولا يختار التمارين ولا يجعلها أصعب. لا أحد يراقبك وأنت تتمرن، وهو لا يطلب النجدة. ليس للخطوات الأولى بطرف جديد من دون شخص بجانبك، ولا لمن قيل له ألا يتمرن وحده.</translation>
    </message>
    <message>
        <source>Please remember</source>
        <translation>تذكّر</translation>
    </message>
    <message>
        <source>This is not an emergency service. In danger, call the emergency number.</source>
        <translation>هذه ليست خدمة طوارئ. عند الخطر اتصل برقم الطوارئ.</translation>
    </message>
    <message>
        <source>Nobody reads messages at once.</source>
        <translation>لا أحد يقرأ الرسائل فورًا.</translation>
    </message>
    <message>
        <source>Stop if something feels wrong.</source>
        <translation>توقف إذا شعرت أن شيئًا ليس على ما يرام.</translation>
    </message>
    <message>
        <source>What your therapist or doctor says counts more than this phone.</source>
        <translation>ما يقوله معالجك أو طبيبك أهم من هذا الهاتف.</translation>
    </message>
    <message>
        <source>With no network, what you see may be old.</source>
        <translation>من دون شبكة قد يكون ما تراه قديمًا.</translation>
    </message>
    <message>
        <source>Local law and your clinic&apos;s rules decide.</source>
        <translation>القرار لقانون البلد وقواعد عيادتك.</translation>
    </message>
    <message>
        <source>This is free software and comes with no warranty.</source>
        <translation>هذا برنامج حر ولا ضمان عليه.</translation>
    </message>
</context>
<context>
    <name>WhoToCall</name>
    <message>
        <source>Call the emergency number now</source>
        <translation>اتصل برقم الطوارئ الآن</translation>
    </message>
    <message>
        <source>Emergency number</source>
        <translation>رقم الطوارئ</translation>
    </message>
    <message>
        <source>This phone does not know your clinic yet. In danger, call your local emergency number.</source>
        <translation>هذا الهاتف لا يعرف عيادتك بعد. عند الخطر اتصل برقم الطوارئ في بلدك.</translation>
    </message>
    <message>
        <source>Call %1</source>
        <translation>اتصل بالرقم %1</translation>
    </message>
    <message>
        <source>Call the clinic</source>
        <translation>اتصل بالعيادة</translation>
    </message>
    <message>
        <source>This device cannot dial. Take a phone and dial the number above.</source>
        <translation>هذا الجهاز لا يستطيع الاتصال. خذ هاتفًا واطلب الرقم أعلاه.</translation>
    </message>
</context>
<context>
    <name>WritePage</name>
    <message>
        <source>Write to your therapist</source>
        <translation>اكتب إلى معالجك</translation>
    </message>
    <message>
        <source>Nobody reads this at once</source>
        <translation>لا أحد يقرأ هذا فورًا</translation>
    </message>
    <message>
        <source>With pain, a wound or a fall, call instead.</source>
        <translation>عند الألم أو الجرح أو السقوط اتصل هاتفيًا.</translation>
    </message>
    <message>
        <source>Your words</source>
        <translation>كلماتك</translation>
    </message>
    <message>
        <source>Kept. It goes to the clinic as soon as it can be reached.</source>
        <translation>حُفظ. يُرسل إلى العيادة حالما يمكن الوصول إليها.</translation>
    </message>
    <message>
        <source>Written before</source>
        <translation>ما كُتب من قبل</translation>
    </message>
    <message>
        <source>Send</source>
        <translation>أرسل</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>This phone has no safe place for a key</source>
        <translation>لا مكان آمنًا للمفتاح في هذا الهاتف</translation>
    </message>
    <message>
        <source>Newel locks what it keeps about you with a key. This phone has no place of its own for keys, so the key would lie in a file beside your data. Whoever gets at this phone&apos;s storage could then read it.</source>
        <translation>يقفل Newel ما يحفظه عنك بمفتاح. ليس في هذا الهاتف مكان خاص للمفاتيح، فيبقى المفتاح في ملف بجانب بياناتك. ومن يصل إلى ذاكرة هذا الهاتف يستطيع قراءتها.</translation>
    </message>
    <message>
        <source>Keep the key in a file</source>
        <translation>احفظ المفتاح في ملف</translation>
    </message>
    <message>
        <source>Do not use Newel here</source>
        <translation>لا أستعمل Newel هنا</translation>
    </message>
    <message>
        <source>What Newel keeps on this phone is locked, and its key is not there. Unlock the phone&apos;s place for keys and open Newel again, or phone your clinic. Nothing was changed.</source>
        <translation>ما يحفظه Newel على هذا الهاتف مقفل ومفتاحه ليس موجودًا. افتح مكان المفاتيح في الهاتف ثم افتح Newel من جديد، أو اتصل بعيادتك. لم يتغير شيء.</translation>
    </message>
    <message>
        <source>What Newel keeps on this phone cannot be opened. Phone your clinic. Nothing was deleted.</source>
        <translation>لا يمكن فتح ما يحفظه Newel على هذا الهاتف. اتصل بعيادتك. لم يُحذف شيء.</translation>
    </message>
    <message>
        <source>Newel cannot open</source>
        <translation>لا يمكن فتح Newel</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
    <message>
        <source>Test clock: the date is shifted</source>
        <translation>ساعة اختبار: التاريخ مغيّر</translation>
    </message>
</context>
<context>
    <name>newel::home::AdviceModel</name>
    <message>
        <source>Written down and sent to the clinic: %1</source>
        <translation>كُتب وأُرسل إلى العيادة: %1</translation>
    </message>
</context>
<context>
    <name>newel::home::AppModel</name>
    <message>
        <source>Arrived: %1.</source>
        <translation>وصل: %1.</translation>
    </message>
    <message>
        <source>Arrived.</source>
        <translation>وصل.</translation>
    </message>
    <message>
        <source>The clinic&apos;s computer could not take it. It stays on this phone. Call the clinic.</source>
        <translation>لم يستطع حاسوب العيادة أخذه. يبقى على هذا الهاتف. اتصل بالعيادة.</translation>
    </message>
    <message>
        <source>On its way. It is kept on this phone until the clinic has it.</source>
        <translation>في الطريق. يُحفظ على هذا الهاتف حتى يصل إلى العيادة.</translation>
    </message>
</context>
<context>
    <name>newel::home::FirstRunModel</name>
    <message>
        <source>Step %L1 of %L2</source>
        <translation>الخطوة %L1 من %L2</translation>
    </message>
</context>
<context>
    <name>newel::home::HistoryModel</name>
    <message>
        <source>Of what was due until now this phone knows nothing yet.</source>
        <translation>لا يعرف هذا الهاتف شيئًا بعد عمّا كان مستحقًّا حتى الآن.</translation>
    </message>
    <message>
        <source>Done: %L1 of %L2 that were due, %L3 of them in part.</source>
        <translation>أُنجز: %L1 من %L2 كانت مستحقة، منها %L3 جزئيًّا.</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>لا شيء مطلوب</translation>
    </message>
    <message>
        <source>, </source>
        <translation>، </translation>
    </message>
    <message>
        <source>No number was given in these weeks.</source>
        <translation>لم يُذكر أي رقم في هذه الأسابيع.</translation>
    </message>
    <message>
        <source>Last: %L1, on %2.</source>
        <translation>الأخير: %L1، في %2.</translation>
    </message>
    <message>
        <source>Always %L1.</source>
        <translation>دائمًا %L1.</translation>
    </message>
    <message>
        <source>Between %L1 and %L2.</source>
        <translation>بين %L1 و%L2.</translation>
    </message>
    <message>
        <source>Done: %L1 of %L2 that were due.</source>
        <translation>أُنجز: %L1 من أصل %L2.</translation>
    </message>
    <message>
        <source>done: %L1</source>
        <translation>أُنجز: %L1</translation>
    </message>
    <message>
        <source>in part: %L1</source>
        <translation>جزئيًا: %L1</translation>
    </message>
    <message>
        <source>not done: %L1</source>
        <translation>لم يُنجز: %L1</translation>
    </message>
    <message>
        <source>excused: %L1</source>
        <translation>معفى: %L1</translation>
    </message>
    <message>
        <source>to come: %L1</source>
        <translation>لم يحن بعد: %L1</translation>
    </message>
    <message>
        <source>not known: %L1</source>
        <translation>غير معروف: %L1</translation>
    </message>
</context>
<context>
    <name>newel::home::MessagesModel</name>
    <message>
        <source>You, %1</source>
        <translation>أنت، %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>arrived at the clinic</source>
        <translation>وصل إلى العيادة</translation>
    </message>
    <message>
        <source>not sent yet</source>
        <translation>لم يُرسل بعد</translation>
    </message>
    <message>
        <source>This is too long to send. Please write less.</source>
        <translation>هذا أطول من أن يُرسل. اكتب أقل.</translation>
    </message>
</context>
<context>
    <name>newel::home::PairModel</name>
    <message>
        <source>The clinic does not know this code: it was used already, or it is too old. Ask for a new one.</source>
        <translation>لا تعرف العيادة هذا الرمز: استُعمل من قبل، أو مضى وقته. اطلب رمزًا جديدًا.</translation>
    </message>
    <message>
        <source>Too many wrong codes. Wait a while, then ask the clinic for a new one.</source>
        <translation>رموز خاطئة كثيرة. انتظر قليلًا ثم اطلب من العيادة رمزًا جديدًا.</translation>
    </message>
    <message>
        <source>The clinic cannot be reached. Check that this phone is online and that the address is right.</source>
        <translation>لا يمكن الوصول إلى العيادة. تأكد من أن الهاتف متصل وأن العنوان صحيح.</translation>
    </message>
    <message>
        <source>Another computer answered than the one on your code. Do not go on; call the clinic.</source>
        <translation>أجاب حاسوب غير الذي في رمزك. لا تتابع، واتصل بالعيادة.</translation>
    </message>
    <message>
        <source>This phone is already set up. Erase it in Settings first.</source>
        <translation>هذا الهاتف مُعَدّ من قبل. امسحه أولًا من الإعدادات.</translation>
    </message>
    <message>
        <source>This is not an address. It looks like clinic.example:7443.</source>
        <translation>هذا ليس عنوانًا. شكله مثل clinic.example:7443.</translation>
    </message>
    <message>
        <source>The code has 8 letters and numbers. Please check it.</source>
        <translation>في الرمز ٨ أحرف وأرقام. تأكد منه من فضلك.</translation>
    </message>
    <message>
        <source>This is not a code from the clinic. It begins with newel:1. Copy all of it.</source>
        <translation>هذا ليس رمزًا من العيادة. يبدأ بـ newel:1. انسخه كله.</translation>
    </message>
</context>
<context>
    <name>newel::home::PlayerModel</name>
    <message>
        <source>Then: this exercise is done</source>
        <translation>بعد ذلك: ينتهي هذا التمرين</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>بعد ذلك: %1</translation>
    </message>
    <message numerus="yes">
        <source>of %Ln step(s)</source>
        <translation>
            <numerusform>من ٠ درجة</numerusform>
            <numerusform>من درجة واحدة</numerusform>
            <numerusform>من درجتين</numerusform>
            <numerusform>من %Ln درجات</numerusform>
            <numerusform>من %Ln درجة</numerusform>
            <numerusform>من %Ln درجة</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>of %Ln time(s)</source>
        <translation>
            <numerusform>من ٠ مرة</numerusform>
            <numerusform>من مرة واحدة</numerusform>
            <numerusform>من مرتين</numerusform>
            <numerusform>من %Ln مرات</numerusform>
            <numerusform>من %Ln مرة</numerusform>
            <numerusform>من %Ln مرة</numerusform>
        </translation>
    </message>
    <message>
        <source>minutes to get ready</source>
        <translation>دقائق للاستعداد</translation>
    </message>
    <message>
        <source>seconds to get ready</source>
        <translation>ثوانٍ للاستعداد</translation>
    </message>
    <message>
        <source>minutes to hold</source>
        <translation>دقائق للثبات</translation>
    </message>
    <message>
        <source>seconds to hold</source>
        <translation>ثوانٍ للثبات</translation>
    </message>
    <message>
        <source>minutes of rest</source>
        <translation>دقائق راحة</translation>
    </message>
    <message>
        <source>seconds of rest</source>
        <translation>ثوانٍ راحة</translation>
    </message>
    <message>
        <source>minutes to change side</source>
        <translation>دقائق لتغيير الجانب</translation>
    </message>
    <message>
        <source>seconds to change side</source>
        <translation>ثوانٍ لتغيير الجانب</translation>
    </message>
    <message>
        <source>time %L1 of %L2</source>
        <translation>مرة %L1 من %L2</translation>
    </message>
    <message>
        <source>set %L1 of %L2</source>
        <translation>مجموعة %L1 من %L2</translation>
    </message>
    <message>
        <source>round %L1 of %L2</source>
        <translation>جولة %L1 من %L2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>، </translation>
    </message>
    <message>
        <source>The phone was away or asleep, so the practice waited. What you were in the middle of is done again.</source>
        <translation>كان الهاتف مشغولًا أو نائمًا فانتظر التمرين. ما كنت في وسطه يُعاد.</translation>
    </message>
    <message>
        <source>No voice for your language on this phone: read the words, hear the tones.</source>
        <translation>لا صوت بلغتك على هذا الهاتف: اقرأ الكلمات واسمع النغمات.</translation>
    </message>
    <message>
        <source>The voice does not work just now: read the words, hear the tones.</source>
        <translation>الصوت لا يعمل الآن: اقرأ الكلمات واسمع النغمات.</translation>
    </message>
    <message>
        <source>This phone has no sound just now: read the words.</source>
        <translation>لا صوت في هذا الهاتف الآن: اقرأ الكلمات.</translation>
    </message>
    <message>
        <source>last one</source>
        <translation>الأخيرة</translation>
    </message>
    <message>
        <source>The headphones or the loudspeaker are gone, so the practice waited. Connect them again, or go on with the sound of the phone.</source>
        <translation>انفصلت السماعات أو مكبّر الصوت، فتوقف التمرين مؤقتًا. صِلها من جديد، أو تابع بصوت الهاتف.</translation>
    </message>
    <message>
        <source>No voice for your language on this phone: read the words; it vibrates at every change.</source>
        <translation>لا يوجد صوت للغتك على هذا الهاتف: اقرأ الكلمات؛ يهتز الهاتف عند كل تغيير.</translation>
    </message>
    <message>
        <source>The voice does not work just now: read the words; the phone vibrates at every change.</source>
        <translation>الصوت لا يعمل الآن: اقرأ الكلمات؛ يهتز الهاتف عند كل تغيير.</translation>
    </message>
    <message>
        <source>This phone has no sound just now: read the words; it vibrates at every change.</source>
        <translation>لا صوت في هذا الهاتف الآن: اقرأ الكلمات؛ يهتز الهاتف عند كل تغيير.</translation>
    </message>
</context>
<context>
    <name>newel::home::PracticeModel</name>
    <message>
        <source>Before you start, %L1 of %L2</source>
        <translation>قبل أن تبدأ، %L1 من %L2</translation>
    </message>
    <message>
        <source>Exercise %L1 of %L2</source>
        <translation>تمرين %L1 من %L2</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1، نحو %2</translation>
    </message>
    <message>
        <source>Done for now</source>
        <translation>انتهيت الآن</translation>
    </message>
    <message>
        <source>Stopped, and that is fine</source>
        <translation>توقفت، وهذا لا بأس به</translation>
    </message>
    <message>
        <source>Stopped for your safety</source>
        <translation>توقف من أجل سلامتك</translation>
    </message>
    <message>
        <source>The clinic asked you to stop</source>
        <translation>طلبت العيادة أن تتوقف</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>ليس اليوم</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>مغلق</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>لم يتم</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>لم يتم: %1</translation>
    </message>
    <message numerus="yes">
        <source>%L1 of %Ln time(s)</source>
        <translation>
            <numerusform>%L1 من ٠ مرة</numerusform>
            <numerusform>%L1 من مرة واحدة</numerusform>
            <numerusform>%L1 من مرتين</numerusform>
            <numerusform>%L1 من %Ln مرات</numerusform>
            <numerusform>%L1 من %Ln مرة</numerusform>
            <numerusform>%L1 من %Ln مرة</numerusform>
        </translation>
    </message>
    <message>
        <source>, pain %L1 of %L2</source>
        <translation>، الألم %L1 من %L2</translation>
    </message>
    <message>
        <source>, effort %L1 of %L2</source>
        <translation>، الجهد %L1 من %L2</translation>
    </message>
</context>
<context>
    <name>newel::home::ProgrammeModel</name>
    <message>
        <source>Programme %L1</source>
        <translation>برنامج %L1</translation>
    </message>
    <message>
        <source>No programme yet</source>
        <translation>لا برنامج بعد</translation>
    </message>
    <message>
        <source>The clinic has not sent one. It comes by itself once it is signed.</source>
        <translation>لم ترسل العيادة برنامجًا. يصل وحده عندما يُوقّع.</translation>
    </message>
    <message>
        <source>From %1, until %2</source>
        <translation>من %1، حتى %2</translation>
    </message>
</context>
<context>
    <name>newel::home::ReminderModel</name>
    <message>
        <source>Your quiet hours cover it: no reminder here.</source>
        <translation>تقع في ساعات هدوئك: لا تذكير هنا.</translation>
    </message>
    <message>
        <source>This phone does not let Newel show reminders. You can allow it in the phone&apos;s own settings. What is due is always on the page for today.</source>
        <translation>لا يسمح هذا الهاتف لـ Newel بعرض التذكيرات. يمكنك السماح بذلك في إعدادات الهاتف نفسه. المطلوب موجود دائمًا في صفحة اليوم.</translation>
    </message>
    <message>
        <source>This phone has nothing that shows reminders, so none will come. What is due is always on the page for today.</source>
        <translation>ليس في هذا الهاتف ما يعرض التذكيرات، فلن يأتي أي منها. المطلوب موجود دائمًا في صفحة اليوم.</translation>
    </message>
    <message>
        <source>They come also when the window of Newel is closed.</source>
        <translation>تأتي أيضًا حين تكون نافذة Newel مغلقة.</translation>
    </message>
    <message>
        <source>They come only while Newel is open. It may lie behind other windows.</source>
        <translation>تأتي فقط حين يكون Newel مفتوحًا. قد يكون خلف نوافذ أخرى.</translation>
    </message>
    <message>
        <source>No reminder is due in the coming week.</source>
        <translation>لا تذكير في الأسبوع القادم.</translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>التالي: %1.</translation>
    </message>
    <message>
        <source>tomorrow at %1</source>
        <translation>غدًا الساعة %1</translation>
    </message>
    <message>
        <source>No reminders.</source>
        <translation>لا تذكيرات.</translation>
    </message>
</context>
<context>
    <name>newel::home::ReminderService</name>
    <message>
        <source>Newel</source>
        <translation>Newel</translation>
    </message>
    <message>
        <source>You asked for a reminder now.</source>
        <translation>طلبت تذكيرًا الآن.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>افتح</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>لاحقًا</translation>
    </message>
</context>
<context>
    <name>newel::home::ScanModel</name>
    <message>
        <source>Newel may not use the camera. Allow it in the settings of this phone, or go back and type the code.</source>
        <translation>لا يُسمح لـ Newel باستخدام الكاميرا. اسمح بذلك في إعدادات هذا الهاتف، أو ارجع واكتب الرمز.</translation>
    </message>
    <message>
        <source>This phone has no camera that Newel can use. Go back and type the code.</source>
        <translation>لا توجد في هذا الهاتف كاميرا يستطيع Newel استخدامها. ارجع واكتب الرمز.</translation>
    </message>
    <message>
        <source>The camera does not work just now. Go back and type the code.</source>
        <translation>الكاميرا لا تعمل الآن. ارجع واكتب الرمز.</translation>
    </message>
</context>
<context>
    <name>newel::home::SettingsModel</name>
    <message>
        <source>This phone has no sound just now. Every cue is on the screen as well.</source>
        <translation>لا صوت في هذا الهاتف الآن. كل تعليمة على الشاشة أيضًا.</translation>
    </message>
    <message>
        <source>This phone has no voice for your language. Every cue is on the screen as well.</source>
        <translation>لا صوت بلغتك في هذا الهاتف. كل تعليمة على الشاشة أيضًا.</translation>
    </message>
    <message>
        <source>The voice does not work just now. Every cue is on the screen as well.</source>
        <translation>الصوت لا يعمل الآن. كل تعليمة على الشاشة أيضًا.</translation>
    </message>
    <message>
        <source>Get ready. This is how I sound.</source>
        <translation>استعد. هكذا صوتي.</translation>
    </message>
</context>
<context>
    <name>newel::home::TakeAlongModel</name>
    <message numerus="yes">
        <source>%n record(s) have not reached the clinic and would be lost.</source>
        <translation>
            <numerusform>كل السجلات وصلت إلى العيادة.</numerusform>
            <numerusform>سجل واحد لم يصل إلى العيادة وسيضيع.</numerusform>
            <numerusform>سجلان لم يصلا إلى العيادة وسيضيعان.</numerusform>
            <numerusform>%n سجلات لم تصل إلى العيادة وستضيع.</numerusform>
            <numerusform>%n سجلًا لم يصل إلى العيادة وسيضيع.</numerusform>
            <numerusform>%n سجل لم يصل إلى العيادة وسيضيع.</numerusform>
        </translation>
    </message>
    <message>
        <source>The file %1 is in the folder %2.</source>
        <translation>الملف %1 في المجلد %2.</translation>
    </message>
    <message>
        <source>This phone has no folder for documents, or nothing can be written there. Nothing was saved.</source>
        <translation>ليس في هذا الهاتف مجلد للمستندات، أو لا يمكن الكتابة فيه. لم يُحفظ شيء.</translation>
    </message>
    <message>
        <source>Newel, about me, %1</source>
        <translation>Newel، عني، %1</translation>
    </message>
    <message>
        <source>The file could not be written, so nothing was saved. Is there room on this phone? (%1)</source>
        <translation>تعذرت كتابة الملف ولم يُحفظ شيء. هل في هذا الهاتف مكان؟ (%1)</translation>
    </message>
</context>
<context>
    <name>newel::home::TellLaterModel</name>
    <message>
        <source>Today</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>أمس</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
</context>
<context>
    <name>newel::home::TodayModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>No more practice today. Tomorrow you may start again.</source>
        <translation>لا تمرين بعد اليوم. غدًا يمكنك أن تبدأ من جديد.</translation>
    </message>
    <message>
        <source>No practice until the clinic has spoken with you. Please call the clinic.</source>
        <translation>لا تمرين حتى تتحدث العيادة معك. اتصل بالعيادة من فضلك.</translation>
    </message>
    <message>
        <source>Your programme ended on %1. Ask the clinic what comes next.</source>
        <translation>انتهى برنامجك في %1. اسأل العيادة عما يليه.</translation>
    </message>
    <message>
        <source>Your programme begins on %1.</source>
        <translation>يبدأ برنامجك في %1.</translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>التالي: %1.</translation>
    </message>
    <message>
        <source>No programme yet</source>
        <translation>لا برنامج بعد</translation>
    </message>
    <message>
        <source>Your practice is on hold</source>
        <translation>تمرينك موقوف</translation>
    </message>
    <message>
        <source>All done for today</source>
        <translation>تم كل شيء لليوم</translation>
    </message>
    <message>
        <source>Nothing to do today</source>
        <translation>لا شيء اليوم</translation>
    </message>
    <message numerus="yes">
        <source>%Ln to do</source>
        <translation>
            <numerusform>لا شيء</numerusform>
            <numerusform>تمرين واحد</numerusform>
            <numerusform>تمرينان</numerusform>
            <numerusform>%Ln تمارين</numerusform>
            <numerusform>%Ln تمرينًا</numerusform>
            <numerusform>%Ln تمرين</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop: %1 put all practice on hold</source>
        <translation>قف: أوقف %1 كل التمارين</translation>
    </message>
    <message>
        <source>Stop: %1 put a part on hold</source>
        <translation>قف: أوقف %1 جزءًا</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>من %1</translation>
    </message>
    <message>
        <source>You stopped in the middle of: %1.</source>
        <translation>توقفت في وسط: %1.</translation>
    </message>
    <message>
        <source>The clinic ended this phone&apos;s access. Call the clinic.</source>
        <translation>أنهت العيادة دخول هذا الهاتف. اتصل بالعيادة.</translation>
    </message>
    <message>
        <source>Read the message from the clinic first.</source>
        <translation>اقرأ رسالة العيادة أولًا.</translation>
    </message>
    <message>
        <source>Rest for your skin</source>
        <translation>راحة لجلدك</translation>
    </message>
    <message>
        <source>Leave the prosthesis off</source>
        <translation>لا تلبس الطرف الصناعي</translation>
    </message>
    <message>
        <source>Your skin needs a rest until the clinic has spoken with you. What you do with the prosthesis on waits.</source>
        <translation>جلدك يحتاج إلى راحة إلى أن تتحدث العيادة معك. ما تقوم به والطرف الصناعي ملبوس ينتظر.</translation>
    </message>
    <message>
        <source>A photo comes with it: look under Help, Write to your therapist.</source>
        <translation>معها صورة: انظر في مساعدة، ثم اكتب إلى معالجك.</translation>
    </message>
    <message>
        <source>A clip comes with it: look under Help, Write to your therapist.</source>
        <translation>معها مقطع: انظر في مساعدة، ثم اكتب إلى معالجك.</translation>
    </message>
</context>
<context>
    <name>newel::home::WearModel</name>
    <message>
        <source>Your wear plan begins on %1</source>
        <translation>تبدأ خطة اللبس في %1</translation>
    </message>
    <message>
        <source>The prosthesis is off</source>
        <translation>الطرف الصناعي مخلوع</translation>
    </message>
    <message>
        <source>Leave it off until %1</source>
        <translation>لا تلبسه قبل الساعة %1</translation>
    </message>
    <message>
        <source>Time is up: take it off now</source>
        <translation>انتهى الوقت: اخلعه الآن</translation>
    </message>
    <message>
        <source>On since %1</source>
        <translation>ملبوس منذ %1</translation>
    </message>
    <message>
        <source>Look at your skin now</source>
        <translation>انظر إلى جلدك الآن</translation>
    </message>
    <message>
        <source>Watch the red skin</source>
        <translation>راقب الجلد الأحمر</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>يكفي لليوم</translation>
    </message>
    <message>
        <source>Leave the prosthesis off</source>
        <translation>لا تلبس الطرف الصناعي</translation>
    </message>
    <message>
        <source>Your plan: %1.</source>
        <translation>خطتك: %1.</translation>
    </message>
    <message>
        <source>In between at least %1 off.</source>
        <translation>بينهما %1 على الأقل بدونه.</translation>
    </message>
    <message>
        <source>Not worn yet today.</source>
        <translation>لم يُلبس اليوم بعد.</translation>
    </message>
    <message>
        <source>Worn today: %1.</source>
        <translation>لُبس اليوم: %1.</translation>
    </message>
    <message>
        <source>Take it off when it hurts, and look at your skin each time.</source>
        <translation>اخلعه إذا آلمك، وانظر إلى جلدك كل مرة.</translation>
    </message>
    <message>
        <source>This time at most %1.</source>
        <translation>هذه المرة %1 على الأكثر.</translation>
    </message>
    <message>
        <source>Take it off when it hurts, and look at your skin.</source>
        <translation>اخلعه إذا آلمك، وانظر إلى جلدك.</translation>
    </message>
    <message>
        <source>Then look at your skin.</source>
        <translation>ثم انظر إلى جلدك.</translation>
    </message>
    <message>
        <source>Off again at %1.</source>
        <translation>اخلعه الساعة %1.</translation>
    </message>
    <message>
        <source>All round the residual limb, with a mirror. Choose all that you see or feel.</source>
        <translation>حول الطرف المتبقي كله، بمرآة. اختر كل ما تراه أو تشعر به.</translation>
    </message>
    <message>
        <source>Tomorrow it goes on.</source>
        <translation>نتابع غدًا.</translation>
    </message>
    <message>
        <source>Your skin needs a rest. Leave the prosthesis off until the clinic has spoken with you. Please call the clinic.</source>
        <translation>جلدك يحتاج إلى راحة. لا تلبس الطرف الصناعي إلى أن تتحدث العيادة معك. اتصل بالعيادة من فضلك.</translation>
    </message>
    <message>
        <source>Your skin stayed red for too long. Wear no more than now, and call the clinic.</source>
        <translation>بقي جلدك أحمر وقتًا طويلًا. لا تلبسه أكثر من الآن، واتصل بالعيادة.</translation>
    </message>
    <message>
        <source>Was the red gone at %1?</source>
        <translation>هل زال الاحمرار الساعة %1؟</translation>
    </message>
    <message>
        <source>Leave it off and look again at %1. Is the red gone already?</source>
        <translation>لا تلبسه وانظر ثانية الساعة %1. هل زال الاحمرار الآن؟</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 إلى %2، %3</translation>
    </message>
    <message>
        <source>Told later, not timed.</source>
        <translation>سُجّل لاحقًا، بلا توقيت.</translation>
    </message>
    <message>
        <source>now</source>
        <translation>الآن</translation>
    </message>
    <message>
        <source>Worn today: less than a minute.</source>
        <translation>لُبس اليوم: أقل من دقيقة.</translation>
    </message>
</context>
</TS>
